package org.siltbench.station.window.check;

import java.time.LocalDate;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.window.look.Segments;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.override.OverridePane;
import org.siltbench.station.work.check.CheckSheet;

/** The check in front, and the records of balance, weights and room behind it. */
final class CheckView extends VBox {

  private final Texts texts;
  private final CheckPane check;
  private final HBox state = new HBox();

  CheckView(CheckModel model, EquipModel equip, Desk desk) {
    texts = desk.texts(CheckView.class);
    Moments moments = new Moments(desk.clock(), desk.locale());
    check =
        new CheckPane(
            model,
            new OverridePane(model.override(), desk.texts(OverridePane.class)),
            texts,
            moments);
    Node balance = new BalancePane(equip, texts, () -> LocalDate.now(desk.clock()));
    Node weights = new WeightsPane(equip, texts, () -> LocalDate.now(desk.clock()));
    Node room = new RoomPane(equip, texts, moments);
    StackPane body = new StackPane(check);
    VBox.setVgrow(body, Priority.ALWAYS);
    Segments panes =
        new Segments(
            texts,
            "pane.",
            List.of("check", "balance", "weights", "room"),
            pane ->
                body.getChildren()
                    .setAll(
                        switch (pane) {
                          case "balance" -> balance;
                          case "weights" -> weights;
                          case "room" -> room;
                          default -> check;
                        }));
    panes.show("check");
    HBox head =
        new HBox(
            Controls.whole(Controls.text(texts, "title", "title")),
            state,
            Controls.spring(),
            panes);
    head.getStyleClass().add("level");
    getStyleClass().add("screen");
    getChildren().addAll(head, body);
    model.sheet().subscribe(now -> now.ifPresent(this::show));
  }

  private void show(CheckSheet now) {
    state.getChildren().setAll(chip(now));
  }

  private HBox chip(CheckSheet now) {
    if (now.balance().isEmpty()) {
      return Controls.chip(Tone.PLAIN, Shape.RING, texts.get("state.none"));
    }
    if (now.today().override().isPresent()) {
      return Controls.chip(Tone.WARN, Shape.TRIANGLE, texts.get("state.overridden", now.balance()));
    }
    if (now.today().last().isEmpty()) {
      return Controls.chip(Tone.WARN, Shape.TRIANGLE, texts.get("state.missing", now.balance()));
    }
    return now.today().passed()
        ? Controls.chip(Tone.GOOD, Shape.TICK, texts.get("state.passed", now.balance()))
        : Controls.chip(Tone.BAD, Shape.CROSS, texts.get("state.failed", now.balance()));
  }

  /** The one key: weighs the check weight. */
  void start() {
    check.start();
  }
}
