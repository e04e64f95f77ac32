package org.siltbench.station.window.postweigh;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.postweigh.PostWeighModel.Step;

/** What to do now, and below it what the last weighing came to. */
final class PostNowCard extends VBox {

  private final PostWeighModel model;
  private final Texts texts;
  private final StackPane mark = new StackPane();
  private final Label say = Controls.label("now-say");
  private final Label what = Controls.label("now-what");
  private final Button decide;
  private final VerdictPane verdict;
  private Tone tone = Tone.PLAIN;

  PostNowCard(PostWeighModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    this.verdict = new VerdictPane(texts);
    this.decide = Controls.primary(texts, "decide", model::decide);
    getStyleClass().addAll("card", "now");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.TEXT);
    say.setId("step");
    what.setId("what");
    HBox shown = new HBox(mark, new VBox(say, what));
    shown.getStyleClass().add("now-row");
    Button finish = Controls.button(texts, "finish", model::finish);
    Button stop = Controls.button(texts, "stop", model::stop);
    HBox foot = new HBox(decide, Controls.spring(), finish, stop);
    foot.getStyleClass().add("now-row");
    VBox.setVgrow(verdict, Priority.ALWAYS);
    getChildren().addAll(shown, verdict, foot);
    model.step().subscribe(step -> show());
    model.current().subscribe(current -> show());
    model.answer().subscribe(this::answer);
  }

  private void show() {
    Step step = model.step().get();
    getStyleClass().remove(tone.style());
    tone = tone(step);
    getStyleClass().add(tone.style());
    mark.getChildren().setAll(shape(step).node("now-shape"));
    say.setText(texts.get("step." + step));
    what.setText(model.current().get());
    setAccessibleText(say.getText() + " " + what.getText());
    boolean deciding = step == Step.DECIDE;
    decide.setVisible(deciding);
    decide.setManaged(deciding);
  }

  private void answer(Optional<Answer> answer) {
    verdict.show(answer);
  }

  private static Tone tone(Step step) {
    return switch (step) {
      case SCAN, PLACE -> Tone.GOOD;
      case WAIT, STARTING -> Tone.WAIT;
      case DECIDE -> Tone.WARN;
      default -> Tone.PLAIN;
    };
  }

  private static Shape shape(Step step) {
    return switch (step) {
      case SCAN -> Shape.BAG;
      case PLACE -> Shape.DOWN;
      case TAKE_OFF, EMPTY_PAN -> Shape.UP;
      case WAIT -> Shape.WAVE;
      case DECIDE -> Shape.TRIANGLE;
      case OVER -> Shape.TICK;
      case SET_UP, STARTING -> Shape.CLOCK;
    };
  }
}
