package org.siltbench.station.window.preweigh;

import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.preweigh.PreWeighModel.Step;

/** Left what to do, right what is on the disk. */
final class PreWeighView extends VBox {

  private final PreWeighModel model;
  private final Texts texts;
  private final VBox rows = new VBox();
  private final SetUpCard setUp;
  private final NowCard now;
  private final Label end = Controls.label("subtitle");

  PreWeighView(PreWeighModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    this.setUp = new SetUpCard(model, texts);
    this.now = new NowCard(model, texts);
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
    model.rows().addListener((ListChangeListener<PreRow>) change -> showRows());
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

  private HBox row(PreRow row) {
    Label what = Controls.label("list-what");
    what.setText(row.what());
    Label note = Controls.label("hint");
    note.setText(row.note().isEmpty() ? texts.get("kind." + row.kind()) : row.note());
    VBox said = new VBox(what, note);
    HBox.setHgrow(said, Priority.ALWAYS);
    Label grams = Controls.whole(Controls.label("list-grams"));
    grams.setText(row.grams().isEmpty() ? "" : texts.get("grams", row.grams()));
    HBox line = new HBox(shape(row.kind()).node("row-shape"), said, grams);
    line.getStyleClass().addAll("list-row", tone(row.kind()).style());
    return line;
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
