package org.siltbench.station.window.shell;

import javafx.scene.control.Button;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;

/** Asks who is there, above the work and never in front of it. */
final class SignOnPane extends HBox {

  private final Desk desk;
  private final TextField initials = new TextField();
  private final PasswordField pin = new PasswordField();
  private final VBox pinField;

  SignOnPane(Desk desk, Texts texts) {
    this.desk = desk;
    this.pinField = Controls.field(texts, "pin", pin);
    getStyleClass().addAll("card", "sign-on");
    Button in = Controls.primary(texts, "sign.on", this::sign);
    Button out =
        Controls.button(
            texts,
            "sign.off",
            () -> {
              desk.signOn().off();
              close();
            });
    Button not = Controls.button(texts, "sign.close", this::close);
    not.getStyleClass().add("flat");
    getChildren().addAll(Controls.field(texts, "initials", initials), pinField, in, out, not);
    initials.setOnAction(event -> next());
    pin.setOnAction(event -> sign());
    close();
    desk.signOn()
        .initials()
        .subscribe(
            (before, now) -> {
              if (now.isEmpty()) {
                open("");
              } else {
                close();
              }
            });
  }

  void open(String known) {
    Controls.shown(this, true);
    boolean asks = desk.signOn().asksPin();
    Controls.shown(pinField, asks);
    initials.setText(known);
    (known.isEmpty() || !asks ? initials : pin).requestFocus();
  }

  void toggle() {
    if (isVisible()) {
      close();
    } else {
      open("");
    }
  }

  private void close() {
    pin.clear();
    Controls.shown(this, false);
  }

  private void next() {
    if (pinField.isVisible()) {
      pin.requestFocus();
    } else {
      sign();
    }
  }

  private void sign() {
    String name = initials.getText();
    char[] secret = pin.getText().toCharArray();
    pin.clear();
    desk.work()
        .run(
            () -> desk.signOn().check(name, secret),
            person -> {
              desk.signOn().on(person);
              desk.notices().clear("sign-on");
              close();
            },
            problem -> desk.notices().show("sign-on", problem));
  }
}
