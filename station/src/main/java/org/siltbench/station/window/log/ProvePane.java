package org.siltbench.station.window.log;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.DoingView;
import org.siltbench.station.window.look.FocusScroll;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Sheet;
import org.siltbench.station.window.look.Tone;

/** Verify, and the log sheet. */
final class ProvePane extends VBox {

  private final Texts texts;
  private final VBox found = new VBox();

  ProvePane(ProveModel model, Texts texts) {
    this.texts = texts;
    found.getStyleClass().add("form");
    FocusScroll scroll = new FocusScroll(found);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getStyleClass().addAll("card", "form");
    getChildren()
        .setAll(
            Controls.text(texts, "verify.title", "subtitle"),
            Controls.text(texts, "verify.hint", "hint"),
            new Sheet(texts, 1, model::verify).text("paper", model.paper),
            Controls.acts(Controls.primary(texts, "verify", model::verify)),
            new DoingView(texts, model.doing(), step -> texts.get("doing." + step)),
            scroll,
            Controls.text(texts, "sheet.title", "subtitle"),
            Controls.acts(Controls.button(texts, "sheet", model::sheet)));
    model.report().subscribe(this::show);
  }

  private void show(Optional<VerifyLab.Report> report) {
    found.getChildren().clear();
    report.ifPresent(this::show);
  }

  private void show(VerifyLab.Report report) {
    Node verdict =
        report.ok()
            ? Controls.chip(Tone.GOOD, Shape.TICK, texts.get("verify.ok"))
            : Controls.chip(
                Tone.BAD, Shape.CROSS, texts.get("verify.bad", report.problems().size()));
    verdict.setId("verdict");
    found.getChildren().add(verdict);
    report
        .ledgers()
        .values()
        .forEach(
            one -> say(texts.get("ledger.is", one.bench(), one.entries(), one.head()), "said-of"));
    report
        .anchors()
        .forEach(
            one ->
                say(
                    texts.get(
                        one.holds() ? "anchor.holds" : "anchor.missing",
                        one.anchor().kind(),
                        one.anchor().where()),
                    "hint"));
    if (report.anchors().isEmpty()) {
      say(texts.get("anchor.none"), "hint");
    }
    report
        .problems()
        .forEach(
            one -> say(texts.get("problem.is", one.bench(), one.seq(), one.says()), "said-of"));
  }

  private void say(String words, String style) {
    Label label = Controls.label(style);
    label.setText(words);
    found.getChildren().add(label);
  }
}
