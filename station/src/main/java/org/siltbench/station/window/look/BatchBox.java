package org.siltbench.station.window.look;

import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.window.desk.BatchChoice;

/** The list in a screen's head from which its batch is chosen. */
public final class BatchBox {

  private BatchBox() {}

  /**
   * A list that follows the choice.
   *
   * @param name what a screen reader calls it
   * @param chosen takes what the person chooses
   */
  public static ComboBox<BatchState> of(
      BatchChoice choice, String name, Consumer<BatchState> chosen) {
    ComboBox<BatchState> box = Choices.of(choice.batches(), one -> one.name() + "  " + one.code());
    box.setId("batch");
    box.getStyleClass().add("batch-choice");
    box.setAccessibleText(name);
    box.setOnAction(
        event -> {
          BatchState one = box.getValue();
          if (one != null) {
            chosen.accept(one);
          }
        });
    choice.batch().subscribe(one -> box.setValue(one.orElse(null)));
    return box;
  }
}
