package org.siltbench.station.window.settings;

import java.util.function.Supplier;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Chooser;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.FileField;

/** Takes a file of this room in from elsewhere, or gives the chosen one out. */
final class OwnFilesLine extends HBox {

  /**
   * A line.
   *
   * @param chosen the name of the file that is chosen in the room, or empty
   */
  OwnFilesLine(SettingsModel model, Texts texts, Supplier<String> chosen) {
    TextField file = new FileField();
    getStyleClass().add("line");
    getChildren()
        .addAll(
            Chooser.beside(texts, "own.file", file, Chooser.Kind.FILE),
            Controls.button(texts, "own.take", () -> model.takeFile(file.getText())),
            Controls.button(texts, "own.give", () -> model.giveFile(chosen.get(), file.getText())));
    setHgrow(getChildren().get(0), javafx.scene.layout.Priority.ALWAYS);
  }
}
