package org.siltbench.station.window.preweigh;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.NowSign;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.preweigh.PreWeighModel.Step;

/** What to do now, in letters to be read over the tweezers. */
final class NowCard extends VBox {

  private final PreWeighModel model;
  private final Texts texts;
  private final NowSign sign = new NowSign(this);
  private final Label count = Controls.label("now-count");
  private final ProgressBar bar = new ProgressBar();

  NowCard(PreWeighModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    Button stop = Controls.button(texts, "stop", model::stop);
    bar.setMaxWidth(Double.MAX_VALUE);
    HBox foot = new HBox(count, Controls.spring(), stop);
    foot.getStyleClass().add("now-row");
    Region gap = new Region();
    VBox.setVgrow(gap, Priority.ALWAYS);
    getChildren().addAll(sign, gap, bar, foot);
    model.step().subscribe(step -> show());
    model.current().subscribe(current -> show());
    model.done().subscribe(done -> count());
    model.due().subscribe(due -> count());
  }

  private void show() {
    Step step = model.step().get();
    boolean about = step != Step.EMPTY_PAN && step != Step.OVER;
    sign.show(
        tone(step), shape(step), texts.get("step." + step), about ? model.current().get() : "");
  }

  private void count() {
    int due = model.due().get();
    count.setText(texts.get("count", model.done().get(), due));
    bar.setProgress(due == 0 ? 0 : (double) model.done().get() / due);
  }

  private static Tone tone(Step step) {
    return switch (step) {
      case PLACE, BAG -> Tone.GOOD;
      case WAIT, STARTING -> Tone.WAIT;
      default -> Tone.PLAIN;
    };
  }

  private static Shape shape(Step step) {
    return switch (step) {
      case PLACE -> Shape.DOWN;
      case TAKE_OFF, EMPTY_PAN -> Shape.UP;
      case WAIT -> Shape.WAVE;
      case BAG -> Shape.BAG;
      case OVER -> Shape.TICK;
      case SET_UP, STARTING -> Shape.CLOCK;
    };
  }
}
