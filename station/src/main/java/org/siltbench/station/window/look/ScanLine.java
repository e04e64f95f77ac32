package org.siltbench.station.window.look;

import java.util.function.Consumer;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;

/** Where a number is typed that could not be scanned: Enter takes it like a scan. */
public final class ScanLine extends HBox {

  private final TextField input = new TextField();

  /**
   * A line for scans.
   *
   * @param key the caption's text, and the id of the field
   * @param taken takes what was typed, without blanks around it
   */
  public ScanLine(Texts texts, String key, Consumer<String> taken) {
    VBox field = Controls.field(texts, key, input);
    HBox.setHgrow(field, Priority.ALWAYS);
    input.setOnAction(
        event -> {
          String typed = input.getText().strip();
          input.clear();
          if (!typed.isEmpty()) {
            taken.accept(typed);
          }
        });
    getChildren().add(field);
    getStyleClass().add("scan-line");
  }

  /** Puts the focus into it, once the key that led here is done with. */
  public void focus() {
    Controls.focus(input);
  }
}
