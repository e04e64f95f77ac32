package org.siltbench.station.window.look;

import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;

/** A run over the pan: left its set-up or what to do now, right what happened. */
public final class RunColumns extends VBox {

  private final Region setUp;
  private final Region now;
  private final Label end = Controls.label("subtitle");

  /**
   * Puts them beside each other, under the screen's title.
   *
   * @param said how the run ended, in words
   * @param wayOut stands under that
   * @param list where the keys begin of its caption and of what stands there while it is empty
   * @param happened what happened, newest first
   * @param row draws one line of it
   */
  public <R> RunColumns(
      Texts texts,
      Region setUp,
      Region now,
      ObservableValue<String> said,
      Region wayOut,
      String list,
      ObservableList<R> happened,
      Function<R, Node> row) {
    this.setUp = setUp;
    this.now = now;
    end.setId("end");
    end.textProperty().bind(said);
    VBox left = new VBox(end, wayOut, setUp, now);
    left.getStyleClass().add("left");
    VBox.setVgrow(now, Priority.ALWAYS);
    HBox.setHgrow(left, Priority.ALWAYS);
    Happened<R> beside =
        new Happened<>(
            Controls.text(texts, list + "caption", "subtitle"),
            Controls.text(texts, list + "empty", "hint"),
            happened,
            row);
    HBox both = new HBox(left, beside);
    both.getStyleClass().add("columns");
    VBox.setVgrow(both, Priority.ALWAYS);
    getStyleClass().add("screen");
    getChildren().addAll(Controls.text(texts, "title", "title"), both);
  }

  /** Shows the set-up before a run, and with how the last one ended after it. */
  public void show(boolean running, boolean over) {
    Controls.shown(setUp, !running);
    Controls.shown(now, running);
    Controls.shown(end, over);
    if (running && !now.isFocusWithin()) {
      now.requestFocus(); // never the button that stops: a stray Enter must do nothing
    }
  }
}
