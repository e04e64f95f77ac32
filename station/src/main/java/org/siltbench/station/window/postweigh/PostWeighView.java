package org.siltbench.station.window.postweigh;

import javafx.scene.Node;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Happened;
import org.siltbench.station.window.look.RunColumns;
import org.siltbench.station.window.override.OverridePane;
import org.siltbench.station.window.postweigh.PostWeighModel.Step;

/** Left what to do and the verdict, right what is on the disk. */
final class PostWeighView {

  private final Texts texts;
  private final PostSetUpCard setUp;
  private final PostNowCard now;
  private final RunColumns columns;

  PostWeighView(PostWeighModel model, OverridePane wayOut, Texts texts) {
    this.texts = texts;
    this.setUp = new PostSetUpCard(model, texts);
    this.now = new PostNowCard(model, texts);
    this.columns =
        new RunColumns(texts, setUp, now, model.end(), wayOut, "list.", model.rows(), this::row);
    model.step().subscribe(this::show);
  }

  Node node() {
    return columns;
  }

  private void show(Step step) {
    columns.show(step != Step.SET_UP && step != Step.OVER, step == Step.OVER);
  }

  private Node row(PostRow row) {
    String word = texts.get("verdict." + row.kind());
    return Happened.row(
        VerdictPane.shape(row.kind()),
        VerdictPane.tone(row.kind()),
        row.what(),
        row.note().isEmpty() ? word : word + ", " + row.note(),
        row.grams().isEmpty() ? "" : texts.get("grams", row.grams()));
  }

  void focus() {
    setUp.focus();
  }

  /** The one key: the decision that is asked for, else the start. */
  boolean oneKey() {
    if (setUp.isVisible()) {
      setUp.start();
      return true;
    }
    return now.decide();
  }
}
