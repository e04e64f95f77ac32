package org.siltbench.station.window.prepare;

import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.ScanLine;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Sheet;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.work.paper.InPrint;

/** Some bags weighed again. */
final class AuditPane extends VBox {

  private final AuditModel model;
  private final Texts texts;
  private final Label which = Controls.label();

  AuditPane(PrepareModel screen, Desk desk) {
    this.model = screen.audit();
    this.texts = desk.texts(AuditPane.class);
    Label now = Controls.label("big");
    now.setId("audit-now");
    now.textProperty().bind(model.now());
    Grid<AuditModel.Row> grid =
        new Grid<AuditModel.Row>(texts, "audited", "audited.none", model.rows())
            .column("filter", 2, row -> InPrint.id(row.filter()))
            .column("mass", 2, AuditModel.Row::grams)
            .column("change", 2, row -> InPrint.signed(row.changeMg()))
            .nodes("agrees", 2, this::agrees);
    VBox.setVgrow(grid, Priority.ALWAYS);
    Button stop = Controls.button(texts, "audit.stop", model::stop);
    stop.disableProperty().bind(model.now().isEmpty());
    which.setId("audit-which");
    getStyleClass().addAll("card", "form");
    getChildren()
        .setAll(
            Controls.text(texts, "audit.hint", "hint"),
            which,
            new ScanLine(texts, "audit.scan", typed -> Entered.take(desk, screen, typed)),
            new Sheet(texts, 3, model::start).text("audit.limit", model.limit),
            now,
            grid,
            Controls.acts(
                Controls.primary(texts, "audit.start", model::start),
                stop,
                Controls.button(texts, "audit.propose", model::propose)));
    model.ids().subscribe(this::which);
    which();
  }

  private Node agrees(AuditModel.Row row) {
    return row.agrees()
        ? Controls.chip(Tone.GOOD, Shape.TICK, texts.get("agrees.yes"))
        : Controls.chip(Tone.BAD, Shape.CROSS, texts.get("agrees.no"));
  }

  private void which() {
    which.setText(
        model.ids().isEmpty()
            ? texts.get("audit.which.none")
            : texts.get(
                "audit.which",
                model.ids().stream().map(InPrint::id).collect(Collectors.joining(", "))));
  }
}
