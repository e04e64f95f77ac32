package org.siltbench.station.window.postweigh;

import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.OneOrNone;

/** Asks, before the first scan, whose bags are expected. */
final class PostSetUpCard extends VBox {

  private final PostWeighModel model;
  private final Texts texts;
  private final OneOrNone batch = new OneOrNone();
  private final OneOrNone weight = new OneOrNone();
  private final CheckBox both;
  private final Button start;

  PostSetUpCard(PostWeighModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    this.both = Controls.check(texts, "both");
    this.start = Controls.primary(texts, "start", this::start);
    getStyleClass().add("card");
    HBox choices =
        new HBox(
            Controls.captioned(texts, "batch", batch), Controls.captioned(texts, "weight", weight));
    choices.getStyleClass().add("fields");
    HBox go = new HBox(start, Controls.text(texts, "start.key", "hint"));
    go.getStyleClass().add("go");
    getChildren().addAll(choices, both, go);
    model.batches().addListener((ListChangeListener<String>) change -> show());
    model.weights().addListener((ListChangeListener<String>) change -> show());
    show();
  }

  private void show() {
    int kept = Math.max(0, batch.getSelectionModel().getSelectedIndex());
    batch.offer(texts.get("batch.any"), model.batches());
    batch.getSelectionModel().select(Math.min(kept, model.batches().size()));
    weight.offer(texts.get("weight.none"), model.weights());
    weight.getSelectionModel().selectLast();
  }

  void focus() {
    start.requestFocus();
  }

  void start() {
    model.start(batch.chosen(), weight.chosen(), both.isSelected());
  }
}
