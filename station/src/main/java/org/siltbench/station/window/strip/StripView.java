package org.siltbench.station.window.strip;

import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.strip.Face.State;

/** The strip: state and prompt, the mass, the last minute, and who, what and when beside it. */
public final class StripView extends HBox {

  private record Look(Shape shape, Tone tone) {}

  private static final Map<State, Look> LOOKS =
      Map.ofEntries(
          Map.entry(State.NO_BALANCE, new Look(Shape.RING, Tone.PLAIN)),
          Map.entry(State.AWAY, new Look(Shape.BREAK, Tone.BAD)),
          Map.entry(State.SILENT, new Look(Shape.TRIANGLE, Tone.WARN)),
          Map.entry(State.UNREADABLE, new Look(Shape.TRIANGLE, Tone.WARN)),
          Map.entry(State.UNSURE, new Look(Shape.WAVE, Tone.PLAIN)),
          Map.entry(State.READY, new Look(Shape.RING, Tone.GOOD)),
          Map.entry(State.REZERO, new Look(Shape.TRIANGLE, Tone.WARN)),
          Map.entry(State.SETTLING, new Look(Shape.WAVE, Tone.WAIT)),
          Map.entry(State.HOLDING, new Look(Shape.LEVEL, Tone.WAIT)),
          Map.entry(State.STABLE, new Look(Shape.LEVEL, Tone.GOOD)),
          Map.entry(State.RECORDED, new Look(Shape.TICK, Tone.GOOD)),
          Map.entry(State.REFUSED, new Look(Shape.CROSS, Tone.BAD)),
          Map.entry(State.MOISTURE, new Look(Shape.DROP, Tone.WARN)),
          Map.entry(State.OUT_OF_RANGE, new Look(Shape.TRIANGLE, Tone.BAD)));

  private static final int TWO_LINES = 60;

  private final Texts texts;
  private final StackPane mark = new StackPane();
  private final Label word = Controls.whole(Controls.label("strip-state"));
  private final Label prompt = Controls.label("strip-prompt");
  private final Label digits = Controls.whole(Controls.label("strip-digits"));
  private final Label unit = Controls.whole(Controls.label("strip-unit"));
  private final TraceView trace = new TraceView();
  private final Side side;
  private Tone tone = Tone.PLAIN;
  private @Nullable State shown;

  /** A view of the model; the button with the person's initials calls back. */
  public StripView(StripModel model, Desk desk, Runnable askWho) {
    this.texts = desk.texts(StripView.class);
    this.side = new Side(model, desk, texts, askWho);
    getStyleClass().addAll("strip", tone.style());
    digits.setId("mass");
    word.setId("state");
    prompt.setId("prompt");
    HBox number = new HBox(digits, unit);
    number.getStyleClass().add("strip-number");
    VBox said = new VBox(word, prompt);
    said.getStyleClass().add("strip-said");
    HBox.setHgrow(said, Priority.SOMETIMES);
    HBox.setHgrow(trace, Priority.ALWAYS);
    getChildren().addAll(mark, number, said, trace, side);
    model.face().subscribe(this::show);
    model.drawings().subscribe(count -> trace.draw(model.trace().picture()));
  }

  private void show(Face face) {
    if (shown != face.state()) { // digits come 15 times a second, another state now and then
      shown = face.state();
      show(face.state());
    }
    boolean none = face.digits().isEmpty();
    digits.setText(none ? "– – –" : face.digits());
    unit.setText(face.unit());
    digits.setAccessibleText(
        none ? texts.get("mass.none") : texts.get("mass.is", face.digits(), face.unit()));
    prompt.setText(asked(face));
  }

  private void show(State state) {
    Look look = LOOKS.getOrDefault(state, new Look(Shape.RING, Tone.PLAIN));
    getStyleClass().remove(tone.style());
    tone = look.tone();
    getStyleClass().add(tone.style());
    mark.getChildren().setAll(look.shape().node("strip-shape"));
    word.setText(texts.get("state." + state));
  }

  /** Without a mass the way back to one comes first. */
  private String asked(Face face) {
    if (face.digits().isEmpty()) {
      return why(face);
    }
    return switch (face.prompt().kind()) {
      case PLACE -> texts.get("place", face.prompt().what());
      case TAKE_OFF -> takeOff(texts.say(face.why()));
      case NONE -> why(face);
    };
  }

  /** There is room for two lines; a longer reason stands whole in the notice below the strip. */
  private String takeOff(String why) {
    return why.isEmpty() || why.length() > TWO_LINES ? texts.get("take.off") : why;
  }

  private String why(Face face) {
    return switch (face.state()) {
      case NO_BALANCE -> texts.get("why.none");
      case AWAY -> texts.get("why.away");
      case SILENT -> texts.get("why.silent");
      case UNREADABLE -> texts.get("why.unreadable", face.why());
      case REZERO -> texts.get("why.rezero", face.why());
      case STABLE -> texts.get("why.stable");
      default -> texts.say(face.why());
    };
  }

  /** The button that asks who is there. */
  public Button who() {
    return side.who();
  }
}
