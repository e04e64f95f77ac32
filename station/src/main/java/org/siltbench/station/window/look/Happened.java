package org.siltbench.station.window.look;

import java.util.List;
import java.util.function.Function;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The list beside a run of what happened, newest first. */
public final class Happened<R> extends VBox {

  private static final int MOST_SHOWN = 100;

  private final VBox rows = new VBox();
  private final Node empty;
  private final Function<R, Node> row;

  /**
   * Follows the list.
   *
   * @param empty stands there while nothing has happened
   * @param row draws one line of it
   */
  public Happened(Label caption, Node empty, ObservableList<R> happened, Function<R, Node> row) {
    rows.getStyleClass().add("rows");
    getChildren().addAll(caption, Controls.scroll(rows));
    getStyleClass().addAll("card", "side-list");
    this.empty = empty;
    this.row = row;
    happened.addListener((ListChangeListener<R>) this::follow);
    draw(happened);
  }

  /** What is new is put on top: drawing all anew would keep the screen waiting at each mass. */
  private void follow(ListChangeListener.Change<? extends R> change) {
    List<Node> lines = rows.getChildren();
    while (change.next()) {
      boolean onTop = change.wasAdded() && !change.wasRemoved() && change.getFrom() == 0;
      if (onTop && !lines.contains(empty)) {
        lines.addAll(0, change.getAddedSubList().stream().map(row).toList());
        lines.subList(Math.min(lines.size(), MOST_SHOWN), lines.size()).clear();
      } else {
        draw(change.getList());
      }
    }
  }

  private void draw(List<? extends R> happened) {
    if (happened.isEmpty()) {
      rows.getChildren().setAll(empty);
    } else {
      rows.getChildren().setAll(happened.stream().limit(MOST_SHOWN).map(row).toList());
    }
  }

  /** A line: a shape in its tone, what it is about, why, and a mass or nothing. */
  public static Node row(Shape shape, Tone tone, String about, String why, String mass) {
    Label what = Controls.label("list-what");
    what.setText(about);
    Label note = Controls.label("hint");
    note.setText(why);
    VBox said = new VBox(what, note);
    HBox.setHgrow(said, Priority.ALWAYS);
    Label grams = Controls.whole(Controls.label("list-grams"));
    grams.setText(mass);
    HBox line = new HBox(shape.node("row-shape"), said, grams);
    line.getStyleClass().addAll("list-row", tone.style());
    return line;
  }
}
