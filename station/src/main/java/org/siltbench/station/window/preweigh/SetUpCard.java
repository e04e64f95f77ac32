package org.siltbench.station.window.preweigh;

import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.OneOrNone;
import org.siltbench.station.window.preweigh.PreWeighModel.Choice;

/** Asks, before the first load, for the batch and how it is weighed. */
final class SetUpCard extends VBox {

  private final PreWeighModel model;
  private final Texts texts;
  private final ChoiceBox<Choice> batch = new ChoiceBox<>();
  private final OneOrNone weight = new OneOrNone();
  private final Spinner<Integer> repeat = new Spinner<>(0, 100, 10);
  private final CheckBox close = new CheckBox();
  private final Button start;
  private final Label none;

  SetUpCard(PreWeighModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    this.start = Controls.primary(texts, "start", this::start);
    this.none = Controls.text(texts, "no.batch", "hint");
    getStyleClass().add("card");
    batch.setConverter(new Names());
    repeat.setEditable(true);
    close.setText(texts.get("close.bags"));
    close.setMnemonicParsing(true);
    close.setId("close.bags");
    HBox choices =
        new HBox(
            Controls.captioned(texts, "batch", batch),
            Controls.captioned(texts, "weight", weight),
            Controls.captioned(texts, "repeat", repeat));
    choices.getStyleClass().add("fields");
    HBox go = new HBox(start, Controls.text(texts, "start.key", "hint"));
    go.getStyleClass().add("go");
    getChildren().addAll(none, choices, close, go);
    model.batches().addListener((ListChangeListener<Choice>) change -> show());
    model.weights().addListener((ListChangeListener<String>) change -> showWeights());
    show();
    showWeights();
  }

  private void show() {
    Choice kept = batch.getValue();
    batch.getItems().setAll(model.batches());
    batch.setValue(
        model.batches().stream()
            .filter(c -> kept != null && c.name().equals(kept.name()))
            .findFirst()
            .orElse(model.batches().isEmpty() ? null : model.batches().get(0)));
    boolean empty = model.batches().isEmpty();
    start.setDisable(empty);
    Controls.shown(none, empty);
  }

  private void showWeights() {
    weight.offer(texts.get("weight.none"), model.weights());
    weight.getSelectionModel().selectLast();
  }

  /** Ready for Enter. */
  void focus() {
    start.requestFocus();
  }

  /** Starts with what is chosen. */
  void start() {
    Choice chosen = batch.getValue();
    if (chosen != null) {
      model.start(chosen.name(), weight.chosen(), repeat.getValue(), close.isSelected());
    }
  }

  private final class Names extends StringConverter<Choice> {
    @Override
    public String toString(Choice choice) {
      return choice == null ? "" : texts.get("batch.choice", choice.name(), choice.due());
    }

    @Override
    public Choice fromString(String text) {
      throw new UnsupportedOperationException();
    }
  }
}
