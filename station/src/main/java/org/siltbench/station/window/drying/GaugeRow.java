package org.siltbench.station.window.drying;

import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;

/** The three fields beside the oven. */
final class GaugeRow extends HBox {

  private final TextField temperature = new TextField();

  /**
   * The fields.
   *
   * @param moment the caption of the moment
   * @param act Enter in any of them
   */
  GaugeRow(Gauge gauge, Texts texts, String moment, Runnable act) {
    TextField thermometer = new TextField();
    TextField when = new TextField();
    temperature.textProperty().bindBidirectional(gauge.temperature);
    thermometer.textProperty().bindBidirectional(gauge.thermometer);
    when.textProperty().bindBidirectional(gauge.moment);
    when.setPromptText(texts.get("now"));
    for (TextField field : new TextField[] {temperature, thermometer, when}) {
      field.setPrefColumnCount(8);
      field.setOnAction(event -> act.run());
    }
    getChildren()
        .setAll(
            Controls.field(texts, "temperature", temperature),
            Controls.field(texts, "thermometer", thermometer),
            Controls.field(texts, moment, when));
    getStyleClass().add("line");
  }

  void focus() {
    Controls.focus(temperature);
  }
}
