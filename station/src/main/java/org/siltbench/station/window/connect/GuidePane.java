package org.siltbench.station.window.connect;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.connect.GuideModel.Step;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;

/** The five steps of a first weighing; the one that is on is marked. */
final class GuidePane extends VBox {

  private final GuideModel model;
  private final Texts texts;
  private final VBox rows = new VBox();
  private final Button go;

  GuidePane(GuideModel model, Texts texts, Runnable prepare) {
    this.model = model;
    this.texts = texts;
    getStyleClass().add("sheet");
    rows.getStyleClass().add("rows");
    go = Controls.primary(texts, "guide.go", model::start);
    Button next = Controls.button(texts, "guide.prepare", prepare);
    HBox acts = new HBox(go, next);
    acts.getStyleClass().add("level");
    if (model.practiceLab()) {
      getChildren().addAll(Controls.text(texts, "guide.hint", "hint"), rows, acts);
    } else {
      getChildren().add(elsewhere());
    }
    model.step().subscribe(this::show);
    model.said().subscribe(said -> show(model.step().get()));
  }

  private Node elsewhere() {
    Label where = Controls.label("hint");
    where.setText(texts.get("practice.where", model.practiceFolder()));
    VBox card =
        new VBox(
            Controls.text(texts, "practice.why", "row-title"),
            where,
            Controls.primary(texts, "practice.open", model::openPractice));
    card.getStyleClass().add("card");
    return card;
  }

  private void show(Step now) {
    rows.getChildren().clear();
    for (Step step : Step.values()) {
      rows.getChildren().add(row(step, now));
    }
    go.setDisable(now != Step.LOOK && now != Step.DONE);
  }

  private HBox row(Step step, Step now) {
    boolean done = step.compareTo(now) < 0 || now == Step.DONE;
    boolean on = step == now && !done;
    Label what = Controls.label("row-title");
    what.setText(texts.get("step." + step.name()));
    Label why = Controls.label("hint");
    why.setText(why(step, done || on));
    why.setMinHeight(USE_PREF_SIZE);
    VBox words = new VBox(what, why);
    HBox.setHgrow(words, Priority.ALWAYS);
    Shape shape = done ? Shape.TICK : on ? Shape.DOWN : Shape.RING;
    HBox row = new HBox(shape.node("row-shape"), words);
    row.setId("step-" + step.name());
    row.getStyleClass().addAll("card", "row", tone(done, on).style());
    if (on) {
      row.getStyleClass().add("picked");
    }
    row.setAccessibleText(
        texts.get(done ? "step.done" : on ? "step.on" : "step.later", what.getText()));
    return row;
  }

  private String why(Step step, boolean reached) {
    boolean mass = step == Step.RECORDED && reached && !model.said().get().isEmpty();
    return mass ? model.said().get() : texts.get("why." + step.name());
  }

  private static Tone tone(boolean done, boolean on) {
    if (done) {
      return Tone.GOOD;
    }
    return on ? Tone.WAIT : Tone.PLAIN;
  }
}
