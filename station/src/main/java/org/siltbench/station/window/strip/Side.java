package org.siltbench.station.window.strip;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;

/** The right end of the strip: balance and its check, who is there, the last mass. */
final class Side extends VBox {

  private final Texts texts;
  private final Button who;
  private final HBox check = new HBox();
  private final Label last = Controls.whole(Controls.label("strip-last"));
  private final Button undo;

  Side(StripModel model, Desk desk, Texts texts, Runnable askWho) {
    this.texts = texts;
    this.who = Controls.button(texts, "who.nobody", askWho);
    this.undo = Controls.button(texts, "undo", () -> model.undo(desk, texts.get("undo.reason")));
    getStyleClass().add("strip-side");
    who.getStyleClass().addAll("flat", "strip-who");
    who.setId("who");
    undo.getStyleClass().add("flat");
    last.setId("last");
    Label balance = Controls.label("strip-balance");
    balance.setWrapText(false);
    balance.setMinWidth(0);
    HBox.setHgrow(balance, Priority.SOMETIMES);
    Controls.whole(who);
    check.setMinWidth(Region.USE_PREF_SIZE);
    check.getStyleClass().add("strip-row");
    balance.textProperty().bind(model.balance());
    HBox first = new HBox(check, balance, Controls.spring(), who);
    HBox second = new HBox(last, Controls.spring(), undo);
    first.getStyleClass().add("strip-row");
    second.getStyleClass().add("strip-row");
    getChildren().addAll(first, second);
    desk.signOn().initials().subscribe(this::showWho);
    model.check().subscribe(this::showCheck);
    model.last().subscribe(this::showLast);
  }

  Button who() {
    return who;
  }

  private void showWho(String initials) {
    who.setGraphic(Shape.PERSON.node());
    who.setText(initials.isEmpty() ? texts.get("who.nobody") : initials);
    who.setAccessibleText(
        initials.isEmpty() ? texts.get("who.nobody") : texts.get("who.is", initials));
  }

  private void showCheck(StripModel.Check state) {
    check
        .getChildren()
        .setAll(
            switch (state) {
              case UNKNOWN -> Controls.chip(Tone.PLAIN, Shape.RING, texts.get("check.UNKNOWN"));
              case MISSING -> Controls.chip(Tone.WARN, Shape.CLOCK, texts.get("check.MISSING"));
              case PASSED -> Controls.chip(Tone.GOOD, Shape.TICK, texts.get("check.PASSED"));
              case FAILED -> Controls.chip(Tone.BAD, Shape.CROSS, texts.get("check.FAILED"));
              case OVERRIDDEN ->
                  Controls.chip(Tone.WARN, Shape.TRIANGLE, texts.get("check.OVERRIDDEN"));
            });
  }

  private void showLast(Optional<StripModel.Last> mass) {
    last.setText(
        mass.map(m -> texts.get("last", m.what(), m.grams())).orElse(texts.get("last.none")));
    undo.setVisible(mass.isPresent());
  }
}
