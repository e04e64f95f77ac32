package org.siltbench.station.window.look;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A run over the pan: left its set-up or what to do now, right what happened. */
public final class RunColumns extends VBox {

  private final Region setUp;
  private final Region now;
  private final Label end = Controls.label("subtitle");

  /**
   * Puts them beside each other.
   *
   * @param said how the run ended, in words
   */
  public RunColumns(
      Label title, Region setUp, Region now, ObservableValue<String> said, Happened<?> happened) {
    this.setUp = setUp;
    this.now = now;
    end.setId("end");
    end.textProperty().bind(said);
    VBox left = new VBox(end, setUp, now);
    left.getStyleClass().add("left");
    VBox.setVgrow(now, Priority.ALWAYS);
    HBox.setHgrow(left, Priority.ALWAYS);
    HBox both = new HBox(left, happened);
    both.getStyleClass().add("columns");
    VBox.setVgrow(both, Priority.ALWAYS);
    getStyleClass().add("screen");
    getChildren().addAll(title, both);
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
