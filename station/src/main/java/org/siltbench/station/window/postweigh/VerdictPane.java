package org.siltbench.station.window.postweigh;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;

/** The last verdict in a word and a shape, with the series as a small picture. */
final class VerdictPane extends HBox {

  private final Texts texts;
  private final StackPane mark = new StackPane();
  private final Label word = Controls.label("verdict-word");
  private final Label more = Controls.label("hint");
  private final SeriesView series = new SeriesView();
  private Tone tone = Tone.PLAIN;

  VerdictPane(Texts texts) {
    this.texts = texts;
    getStyleClass().add("verdict");
    word.setId("verdict");
    VBox said = new VBox(word, more);
    said.getStyleClass().add("verdict-said");
    HBox.setHgrow(series, Priority.ALWAYS);
    getChildren().addAll(mark, said, series);
  }

  void show(Optional<Answer> answer) {
    setVisible(answer.isPresent());
    answer.ifPresent(this::show);
  }

  private void show(Answer last) {
    getStyleClass().remove(tone.style());
    tone = tone(last.kind());
    getStyleClass().add(tone.style());
    mark.getChildren().setAll(shape(last.kind()).node("verdict-shape"));
    word.setText(texts.get("verdict." + last.kind()));
    String about =
        last.changeMg()
            .map(mg -> texts.get("was.changed", last.filter(), last.grams(), mg))
            .orElse(texts.get("was.first", last.filter(), last.grams()));
    more.setText(last.decision() ? about + " " + texts.get("used.up") : about);
    series.show(last.series());
  }

  static Tone tone(PostRow.Kind kind) {
    return switch (kind) {
      case CONSTANT -> Tone.GOOD;
      case DRY_AGAIN, UNKNOWN -> Tone.WARN;
      case NOT_TESTED, CHECK -> Tone.WAIT;
      case REFUSED -> Tone.BAD;
    };
  }

  static Shape shape(PostRow.Kind kind) {
    return switch (kind) {
      case CONSTANT -> Shape.TICK;
      case DRY_AGAIN -> Shape.DROP;
      case NOT_TESTED -> Shape.RING;
      case UNKNOWN -> Shape.TRIANGLE;
      case CHECK -> Shape.WEIGHT;
      case REFUSED -> Shape.CROSS;
    };
  }
}
