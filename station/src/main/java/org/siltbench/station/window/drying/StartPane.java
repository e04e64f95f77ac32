package org.siltbench.station.window.drying;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.window.look.ScanLine;
import org.siltbench.station.window.look.Segments;
import org.siltbench.station.window.look.Words;
import org.siltbench.station.work.drying.DueBatches;
import org.siltbench.station.work.paper.InPrint;

/** The form of a new cycle. */
final class StartPane extends VBox {

  private final StartModel model;
  private final Texts texts;
  private final Moments moments;
  private final ScanLine scan;
  private final Label title = Controls.label("subtitle");
  private final FlowPane waiting = new FlowPane();
  private final Label plan = Controls.label("hint");
  private final Grid<StartModel.Placed> grid;

  StartPane(DryingModel screen, Desk desk) {
    this.model = screen.start();
    this.texts = desk.texts(StartPane.class);
    this.moments = new Moments(desk.clock(), desk.locale());
    this.scan = new ScanLine(texts, "scan", typed -> Entered.take(desk, screen, typed));
    this.grid = table(new Words(desk.locale()));
    Label prompt = Controls.label("row-title");
    prompt.setId("drying-prompt");
    prompt.textProperty().bind(model.prompt());
    Segments purpose =
        new Segments(texts, "purpose.", List.of("post", "pre", "ignition"), this.model::purpose);
    this.model.purpose().subscribe(purpose::show);
    waiting.getStyleClass().add("chips");
    getStyleClass().addAll("card", "form");
    getChildren()
        .setAll(
            title,
            purpose,
            waiting,
            prompt,
            Controls.line(scan, number(), drop()),
            grid,
            plan,
            new GaugeRow(model.gauge(), texts, "since", model::start),
            Controls.line(
                Controls.primary(texts, "start", model::start),
                Controls.button(texts, "clear", model::clear)));
    model.waiting().subscribe(this::waiting);
    model.loads().subscribe(this::plan);
    model.joins().subscribe(this::title);
    waiting();
    plan();
  }

  private Button number() {
    return Controls.button(texts, "number", model::number);
  }

  private Button drop() {
    return Controls.button(texts, "drop", () -> grid.selected(model::remove));
  }

  private Grid<StartModel.Placed> table(Words words) {
    Grid<StartModel.Placed> table =
        new Grid<>(texts, "placed", "placed.none", model.rows())
            .column("dish", 1, row -> row.dish().isEmpty() ? "?" : row.dish())
            .column("filter", 2, row -> InPrint.id(row.state().id()))
            .column("role", 2, row -> words.role(row.state().role()))
            .column("status", 2, row -> words.status(row.state().status()));
    VBox.setVgrow(table, Priority.ALWAYS);
    return table;
  }

  private void title(String cycle) {
    title.setText(cycle.isEmpty() ? texts.get("start.title") : texts.get("start.joins", cycle));
  }

  private void waiting() {
    waiting.getChildren().setAll(model.waiting().stream().map(this::add).toList());
    boolean any = !waiting.getChildren().isEmpty();
    Controls.shown(waiting, any);
  }

  private Button add(DueBatches.Waiting one) {
    Button button = Controls.button(texts, "add", () -> model.addAll(one));
    button.setId("add-" + one.batch().code());
    button.setText(texts.get("add.all", one.filters().size(), one.batch().name()));
    button.setMnemonicParsing(false);
    button.setAccessibleText(button.getText());
    return button;
  }

  private void plan() {
    plan.setText(LoadLines.of(model.loads(), texts, moments));
    plan.setManaged(!plan.getText().isEmpty());
  }

  void focus() {
    scan.focus();
  }
}
