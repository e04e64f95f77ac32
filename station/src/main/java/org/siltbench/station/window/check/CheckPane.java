package org.siltbench.station.window.check;

import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.labels.chart.ChartLayout;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.ChartView;
import org.siltbench.station.window.look.Choices;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.FocusScroll;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.window.look.Segments;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.override.OverridePane;
import org.siltbench.station.work.check.CheckSheet;
import org.siltbench.station.work.check.Phase;

/** Left the check itself and its verdict; right the control chart and the checks so far. */
final class CheckPane extends HBox {

  private static final String USUAL_METHOD = "sm-2540d-23";

  private final CheckModel model;
  private final Texts texts;
  private final Moments moments;
  private final ComboBox<String> weight;
  private final ComboBox<String> method;
  private final Label step = Controls.label("check-step");
  private final VBox verdict = new VBox();
  private final OverridePane override;
  private final Button go;
  private final Button stop;
  private final ChartView chart = new ChartView();
  private final VBox signals = new VBox();
  private final ObservableList<CheckSheet.Line> lines = FXCollections.observableArrayList();
  private Phase phase = Phase.OPENING;

  CheckPane(CheckModel model, OverridePane override, Texts texts, Moments moments) {
    this.override = override;
    this.model = model;
    this.texts = texts;
    this.moments = moments;
    weight = new ComboBox<>(model.weights());
    weight.setEditable(true);
    weight.getEditor().setId("weight.text");
    weight.setValue(model.weight());
    method = Choices.of(model.methods(), key -> key);
    method.setValue(USUAL_METHOD);
    go = Controls.primary(texts, "go", this::start);
    stop = Controls.button(texts, "stop", model::stop);
    verdict.setMinHeight(USE_PREF_SIZE);
    step.setId("step");
    getStyleClass().add("sheet");
    VBox right = right();
    HBox.setHgrow(right, Priority.ALWAYS);
    getChildren().addAll(left(), right);
    weight.valueProperty().subscribe(name -> model.choose(name == null ? "" : name.strip()));
    model.sheet().subscribe(now -> now.ifPresent(this::show));
    model.step().subscribe(this::show);
    model.verdict().subscribe(this::show);
  }

  /** What finds no room under many notices is scrolled to. */
  private FocusScroll left() {
    Segments when =
        new Segments(
            texts,
            "phase.",
            List.of(Phase.OPENING.code(), Phase.BRACKET.code(), Phase.CLOSING.code()),
            word -> phase = Phase.of(word));
    when.show(phase.code());
    weight.setMaxWidth(Double.MAX_VALUE);
    method.setMaxWidth(Double.MAX_VALUE);
    go.setMaxWidth(Double.MAX_VALUE);
    verdict.setId("verdict");
    VBox left =
        new VBox(
            Controls.captioned(texts, "weight", weight),
            when,
            Controls.captioned(texts, "method", method),
            go,
            stop,
            step,
            verdict,
            override);
    left.getStyleClass().add("card");
    FocusScroll scroll = new FocusScroll(left);
    scroll.getStyleClass().add("check-left");
    scroll.setFitToHeight(true);
    return scroll;
  }

  private VBox right() {
    Grid<CheckSheet.Line> table =
        new Grid<>(texts, "checks", "checks.none", lines)
            .column("at", 17, line -> moments.at(line.at()))
            .column("weight", 13, CheckSheet.Line::weight)
            .column("phase", 13, line -> texts.get("phase." + line.phase()).replace("_", ""))
            .column("reading", 14, CheckSheet.Line::reading)
            .column("error", 12, CheckSheet.Line::error)
            .column("limit", 13, CheckSheet.Line::limit)
            .nodes("verdict", 18, this::chip);
    table.getStyleClass().add("tight");
    VBox.setVgrow(table, Priority.ALWAYS);
    signals.getStyleClass().add("small-rows");
    chart.getStyleClass().add("check-chart");
    VBox right = new VBox(chart, signals, table);
    right.getStyleClass().add("sheet");
    return right;
  }

  private Node chip(CheckSheet.Line line) {
    return line.pass()
        ? Controls.chip(Tone.GOOD, Shape.TICK, texts.get("passed"))
        : Controls.chip(Tone.BAD, Shape.CROSS, texts.get("failed"));
  }

  void start() {
    String name = weight.getEditor().getText();
    model.start(name, phase, Optional.ofNullable(method.getValue()).orElse(USUAL_METHOD));
  }

  private void show(CheckModel.Step now) {
    boolean runs = now != CheckModel.Step.CHOOSE;
    go.setDisable(runs);
    Controls.shown(stop, runs);
    Controls.shown(step, runs);
    step.setText(texts.get("step." + now.name(), weight.getEditor().getText()));
  }

  private void show(Optional<CheckModel.Verdict> now) {
    verdict.getChildren().clear();
    verdict.getStyleClass().removeAll("tone-good", "tone-bad", "check-verdict");
    now.ifPresent(this::tell);
  }

  private void tell(CheckModel.Verdict said) {
    Label word = Controls.label("big");
    word.setText(texts.get(said.pass() ? "passed" : "failed"));
    HBox top = new HBox((said.pass() ? Shape.TICK : Shape.CROSS).node("row-shape"), word);
    top.getStyleClass().add("level");
    Label figures = Controls.label();
    figures.setText(texts.get("verdict", said.weight(), said.errorMg(), said.limitMg()));
    figures.setMinHeight(USE_PREF_SIZE);
    verdict.getStyleClass().addAll("check-verdict", said.pass() ? "tone-good" : "tone-bad");
    verdict.getChildren().setAll(top, figures);
    if (!said.pass()) {
      Label next = Controls.text(texts, "failed.next");
      next.setMinHeight(USE_PREF_SIZE);
      verdict.getChildren().add(next);
    }
  }

  private void show(CheckSheet now) {
    ControlChart control = now.chart();
    chart.show(
        control == null ? null : (w, h) -> ChartLayout.of(control, w, h, texts::tell),
        control == null
            ? texts.get("checks.none")
            : texts.get("chart", texts.tell(control.title())));
    lines.setAll(now.lines());
    signals.getChildren().setAll(now.signals().stream().limit(2).map(this::signal).toList());
  }

  private Node signal(CheckSheet.Signal one) {
    Label what = Controls.label();
    what.setText(texts.get("rule." + one.rule(), moments.at(one.at())));
    HBox.setHgrow(what, Priority.ALWAYS);
    HBox row = new HBox(Shape.TRIANGLE.node(), what);
    row.getStyleClass().addAll("level", "tone-warn");
    return row;
  }
}
