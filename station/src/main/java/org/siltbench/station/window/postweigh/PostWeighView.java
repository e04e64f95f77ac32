package org.siltbench.station.window.postweigh;

import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.postweigh.PostWeighModel.Step;

/** Left what to do and the verdict, right what is on the disk. */
final class PostWeighView extends VBox {

  private final PostWeighModel model;
  private final Texts texts;
  private final VBox rows = new VBox();
  private final PostSetUpCard setUp;
  private final PostNowCard now;
  private final Label end = Controls.label("subtitle");

  PostWeighView(PostWeighModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    this.setUp = new PostSetUpCard(model, texts);
    this.now = new PostNowCard(model, texts);
    getStyleClass().add("screen");
    rows.getStyleClass().add("rows");
    end.setId("end");
    end.textProperty().bind(model.end());
    VBox left = new VBox(end, setUp, now);
    left.getStyleClass().add("left");
    VBox.setVgrow(now, Priority.ALWAYS);
    HBox.setHgrow(left, Priority.ALWAYS);
    HBox both = new HBox(left, list());
    both.getStyleClass().add("columns");
    VBox.setVgrow(both, Priority.ALWAYS);
    getChildren().addAll(Controls.text(texts, "title", "title"), both);
    model.step().subscribe(this::show);
    model.rows().addListener((ListChangeListener<PostRow>) change -> showRows());
    showRows();
  }

  private VBox list() {
    ScrollPane scroll = new ScrollPane(rows);
    scroll.setFitToWidth(true);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox list = new VBox(Controls.text(texts, "list", "subtitle"), scroll);
    list.getStyleClass().addAll("card", "side-list");
    return list;
  }

  private void show(Step step) {
    boolean choosing = step == Step.SET_UP || step == Step.OVER;
    setUp.setVisible(choosing);
    setUp.setManaged(choosing);
    now.setVisible(!choosing);
    now.setManaged(!choosing);
    if (!choosing && !now.isFocusWithin()) {
      now.requestFocus(); // never the button that stops: a stray Enter must do nothing
    }
    boolean over = step == Step.OVER;
    end.setVisible(over);
    end.setManaged(over);
  }

  private void showRows() {
    rows.getChildren().setAll(model.rows().stream().limit(100).map(this::row).toList());
    if (model.rows().isEmpty()) {
      rows.getChildren().setAll(Controls.text(texts, "list.empty", "hint"));
    }
  }

  private HBox row(PostRow row) {
    Label what = Controls.label("list-what");
    what.setText(row.what());
    Label note = Controls.label("hint");
    String word = texts.get("verdict." + row.kind());
    note.setText(row.note().isEmpty() ? word : word + ", " + row.note());
    VBox said = new VBox(what, note);
    HBox.setHgrow(said, Priority.ALWAYS);
    Label grams = Controls.whole(Controls.label("list-grams"));
    grams.setText(row.grams().isEmpty() ? "" : texts.get("grams", row.grams()));
    HBox line = new HBox(VerdictPane.shape(row.kind()).node("row-shape"), said, grams);
    line.getStyleClass().addAll("list-row", VerdictPane.tone(row.kind()).style());
    return line;
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
    return model.decide();
  }
}
