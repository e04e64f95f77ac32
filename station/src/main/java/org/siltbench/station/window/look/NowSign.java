package org.siltbench.station.window.look;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What to do now, in letters to be read over the tweezers; its card takes the tone. */
public final class NowSign extends HBox {

  private final Region card;
  private final StackPane mark = new StackPane();
  private final Label say = Controls.label("now-say");
  private final Label what = Controls.label("now-what");
  private Tone tone = Tone.PLAIN;

  /** The sign on this card. */
  public NowSign(Region card) {
    this.card = card;
    card.getStyleClass().addAll("card", "now");
    card.setFocusTraversable(true);
    card.setAccessibleRole(AccessibleRole.TEXT);
    say.setId("step");
    what.setId("what");
    getStyleClass().add("now-row");
    getChildren().addAll(mark, new VBox(say, what));
  }

  /** Says what to do, and with what. */
  public void show(Tone wanted, Shape shape, String step, String about) {
    card.getStyleClass().remove(tone.style());
    tone = wanted;
    card.getStyleClass().add(tone.style());
    mark.getChildren().setAll(shape.node("now-shape"));
    say.setText(step);
    what.setText(about);
    card.setAccessibleText(step + " " + about);
  }
}
