package org.siltbench.station.window.override;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;

/**
 * One button while nobody asks for it; then the reason and, where it takes one, a supervisor's
 * initials and PIN, on the same screen.
 */
public final class OverridePane extends VBox {

  private final OverrideModel model;
  private final Label words = Controls.label();
  private final HBox told;
  private final Button open;
  private final TextField reason = new TextField();
  private final TextField initials = new TextField();
  private final PasswordField pin = new PasswordField();
  private final Node who;
  private final VBox fields;

  /** Shows what the model offers. */
  public OverridePane(OverrideModel model, Texts texts) {
    this.model = model;
    words.setId("override.words");
    HBox.setHgrow(words, Priority.ALWAYS);
    told = new HBox(Shape.TRIANGLE.node(), words);
    told.getStyleClass().addAll("level", "tone-warn");
    open = Controls.button(texts, "override.open", this::ask);
    initials.setPrefColumnCount(5);
    pin.setPrefColumnCount(6);
    who =
        Controls.line(
            Controls.field(texts, "override.initials", initials),
            Controls.field(texts, "override.pin", pin));
    Button not = Controls.button(texts, "override.not", this::close);
    not.getStyleClass().add("flat");
    fields =
        new VBox(
            Controls.text(texts, "override.hint", "hint"),
            Controls.field(texts, "override.reason", reason),
            who,
            Controls.acts(Controls.button(texts, "override.say", this::say), not));
    fields.getStyleClass().add("small-rows");
    reason.setOnAction(event -> next());
    initials.setOnAction(event -> pin.requestFocus());
    pin.setOnAction(event -> say());
    getStyleClass().add("small-rows");
    getChildren().addAll(told, open, fields);
    model.offer().subscribe(this::show);
  }

  private void show(OverrideModel.Offer now) {
    words.setText(now.words());
    boolean offered = now.way() == OverrideModel.Way.OPEN;
    Controls.shown(this, now.way() != OverrideModel.Way.NONE);
    Controls.shown(told, now.way() == OverrideModel.Way.SAID);
    Controls.shown(open, offered && !fields.isVisible());
    if (!offered) {
      reason.clear();
      close();
      Controls.shown(open, false);
    }
  }

  private void ask() {
    Controls.shown(open, false);
    Controls.shown(fields, true);
    Controls.shown(who, model.asksWho());
    reason.requestFocus();
  }

  private void close() {
    pin.clear();
    Controls.shown(fields, false);
    Controls.shown(open, true);
  }

  private void next() {
    if (who.isVisible()) {
      initials.requestFocus();
    } else {
      say();
    }
  }

  private void say() {
    char[] secret = pin.getText().toCharArray();
    pin.clear();
    model.weighOn(reason.getText(), initials.getText(), secret);
  }
}
