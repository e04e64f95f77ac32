package org.siltbench.station.window.preweigh;

import javafx.scene.Node;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Happened;
import org.siltbench.station.window.look.RunColumns;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.override.OverridePane;
import org.siltbench.station.window.preweigh.PreWeighModel.Step;

/** Left what to do, right what is on the disk. */
final class PreWeighView {

  private final PreWeighModel model;
  private final Texts texts;
  private final SetUpCard setUp;
  private final RunColumns columns;

  PreWeighView(PreWeighModel model, OverridePane wayOut, Texts texts) {
    this.model = model;
    this.texts = texts;
    this.setUp = new SetUpCard(model, texts);
    this.columns =
        new RunColumns(
            texts,
            setUp,
            new NowCard(model, texts),
            model.end(),
            wayOut,
            "list.",
            model.rows(),
            this::row);
    model.step().subscribe(this::show);
  }

  Node node() {
    return columns;
  }

  private void show(Step step) {
    columns.show(step != Step.SET_UP && step != Step.OVER, step == Step.OVER);
  }

  private Node row(PreRow row) {
    return Happened.row(
        shape(row.kind()),
        tone(row.kind()),
        row.what(),
        row.note().isEmpty() ? texts.get("kind." + row.kind()) : row.note(),
        row.grams().isEmpty() ? "" : texts.get("grams", row.grams()));
  }

  private static Shape shape(PreRow.Kind kind) {
    return switch (kind) {
      case MASS -> Shape.TICK;
      case REPEAT -> Shape.AGAIN;
      case CHECK -> Shape.WEIGHT;
      case REFUSED -> Shape.CROSS;
    };
  }

  private static Tone tone(PreRow.Kind kind) {
    return switch (kind) {
      case MASS -> Tone.GOOD;
      case REPEAT, CHECK -> Tone.WAIT;
      case REFUSED -> Tone.BAD;
    };
  }

  /** Leads the keyboard to what is most likely wanted. */
  void focus() {
    setUp.focus();
  }

  /** The one key: starts, where there is something to start. */
  boolean oneKey() {
    boolean choosing = setUp.isVisible() && !model.batches().isEmpty();
    if (choosing) {
      setUp.start();
    }
    return choosing;
  }
}
