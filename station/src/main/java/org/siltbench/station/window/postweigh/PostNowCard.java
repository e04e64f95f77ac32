package org.siltbench.station.window.postweigh;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.NowSign;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.postweigh.PostWeighModel.Step;

/** What to do now, and below it what the last weighing came to. */
final class PostNowCard extends VBox {

  private final PostWeighModel model;
  private final Texts texts;
  private final NowSign sign = new NowSign(this);
  private final Button decide;
  private final TextField reason = new TextField();
  private final Node why;
  private final VerdictPane verdict;

  PostNowCard(PostWeighModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    this.verdict = new VerdictPane(texts);
    this.decide = Controls.primary(texts, "decide", this::decide);
    this.why = Controls.field(texts, "reason", reason);
    Button finish = Controls.button(texts, "finish", model::finish);
    Button stop = Controls.button(texts, "stop", model::stop);
    HBox foot = new HBox(decide, Controls.spring(), finish, stop);
    foot.getStyleClass().add("now-row");
    VBox.setVgrow(verdict, Priority.ALWAYS);
    getChildren().addAll(sign, verdict, why, foot);
    model.step().subscribe(step -> show());
    model.current().subscribe(current -> show());
    model.answer().subscribe(verdict::show);
  }

  private void show() {
    Step step = model.step().get();
    sign.show(tone(step), shape(step), texts.get("step." + step), model.current().get());
    boolean deciding = step == Step.DECIDE;
    Controls.shown(decide, deciding);
    Controls.shown(why, deciding);
    if (deciding) {
      reason.clear();
      reason.requestFocus();
    }
  }

  /** The decision that is asked for; its reason is asked for until it is given. */
  boolean decide() {
    return model.decide(reason.getText());
  }

  private static Tone tone(Step step) {
    return switch (step) {
      case SCAN, BAG_OF_DISH, DISH_OF_BAG, PLACE -> Tone.GOOD;
      case WAIT, STARTING -> Tone.WAIT;
      case DECIDE -> Tone.WARN;
      default -> Tone.PLAIN;
    };
  }

  private static Shape shape(Step step) {
    return switch (step) {
      case SCAN, BAG_OF_DISH -> Shape.BAG;
      case DISH_OF_BAG -> Shape.RING;
      case PLACE -> Shape.DOWN;
      case TAKE_OFF, EMPTY_PAN -> Shape.UP;
      case WAIT -> Shape.WAVE;
      case DECIDE -> Shape.TRIANGLE;
      case OVER -> Shape.TICK;
      case SET_UP, STARTING -> Shape.CLOCK;
    };
  }
}
