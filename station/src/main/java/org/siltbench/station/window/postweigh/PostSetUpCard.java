package org.siltbench.station.window.postweigh;

import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;

/** Asks, before the first scan, whose bags are expected. */
final class PostSetUpCard extends VBox {

  private final PostWeighModel model;
  private final Texts texts;
  private final ChoiceBox<String> batch = new ChoiceBox<>();
  private final ChoiceBox<String> weight = new ChoiceBox<>();
  private final Button start;

  PostSetUpCard(PostWeighModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    this.start = Controls.primary(texts, "start", this::start);
    getStyleClass().add("card");
    HBox choices =
        new HBox(
            Controls.captioned(texts, "batch", batch), Controls.captioned(texts, "weight", weight));
    choices.getStyleClass().add("fields");
    HBox go = new HBox(start, Controls.text(texts, "start.key", "hint"));
    go.getStyleClass().add("go");
    getChildren().addAll(choices, go);
    model.batches().addListener((ListChangeListener<String>) change -> show());
    model.weights().addListener((ListChangeListener<String>) change -> show());
    show();
  }

  private void show() {
    int kept = Math.max(0, batch.getSelectionModel().getSelectedIndex());
    batch.getItems().setAll(texts.get("batch.any"));
    batch.getItems().addAll(model.batches());
    batch.getSelectionModel().select(Math.min(kept, model.batches().size()));
    weight.getItems().setAll(texts.get("weight.none"));
    weight.getItems().addAll(model.weights());
    weight.getSelectionModel().selectLast();
  }

  void focus() {
    start.requestFocus();
  }

  void start() {
    model.start(chosen(batch), chosen(weight));
  }

  private static String chosen(ChoiceBox<String> box) {
    return box.getSelectionModel().getSelectedIndex() <= 0 ? "" : box.getValue();
  }
}
