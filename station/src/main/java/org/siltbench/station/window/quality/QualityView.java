package org.siltbench.station.window.quality;

import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.BatchBox;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.work.release.Readiness;

/** The batch and its state above; what was found left; checks, reports and release right. */
final class QualityView extends VBox {

  private final QualityModel model;
  private final Texts texts;
  private final ComboBox<BatchState> batch;
  private final HBox state = new HBox();
  private final HBox body;
  private final Label nothing;

  QualityView(QualityModel model, Texts texts, FindingsPane findings, ReleasePane release) {
    this.model = model;
    this.texts = texts;
    batch = BatchBox.of(model.batch(), texts.get("batch"), model.batch()::choose);
    nothing = Controls.text(texts, "no.batch", "hint");
    nothing.setId("nothing");
    body = new HBox(findings, release);
    body.getStyleClass().add("sheet");
    HBox.setHgrow(findings, Priority.ALWAYS);
    VBox.setVgrow(body, Priority.ALWAYS);
    HBox head = new HBox(Controls.whole(Controls.text(texts, "title", "title")), batch, state);
    head.getStyleClass().add("level");
    getStyleClass().add("screen");
    getChildren().addAll(head, nothing, body);
    model.readiness().subscribe(this::show);
  }

  private void show(Optional<Readiness> now) {
    boolean any = !model.batch().batches().isEmpty();
    batch.setVisible(any);
    Controls.shown(nothing, !any);
    body.setVisible(now.isPresent());
    state.getChildren().clear();
    now.ifPresent(ready -> state.getChildren().setAll(chip(ready)));
  }

  private HBox chip(Readiness now) {
    if (now.released()) {
      return Controls.chip(
          Tone.GOOD, Shape.TICK, texts.get("state.released", now.reports().get(0).report()));
    }
    if (!now.questions().isEmpty()) {
      return Controls.chip(
          Tone.WARN, Shape.TRIANGLE, texts.get("state.questions", now.questions().size()));
    }
    return now.sheet().lines().isEmpty()
        ? Controls.chip(Tone.PLAIN, Shape.RING, texts.get("state.none"))
        : Controls.chip(Tone.GOOD, Shape.TICK, texts.get("state.ready"));
  }
}
