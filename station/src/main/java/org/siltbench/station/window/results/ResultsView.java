package org.siltbench.station.window.results;

import java.util.List;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.siltbench.labels.chart.ChartLayout;
import org.siltbench.labels.chart.TimeChart;
import org.siltbench.station.Problem;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.flag.FlagWords;
import org.siltbench.station.window.look.BatchBox;
import org.siltbench.station.window.look.ChartView;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Segments;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.look.Words;
import org.siltbench.station.work.results.ResultSheet;
import org.siltbench.station.work.results.ResultSheet.Line;

/** The batch above; chart, blanks and duplicates; the table and what its flags mean below. */
final class ResultsView extends VBox {

  private final ResultsModel model;
  private final Texts texts;
  private final ComboBox<BatchState> batch;
  private final HBox state = new HBox();
  private final ChartView chart = new ChartView();
  private final BesideView beside;
  private final Grid<Line> table;
  private final FlagsView flags;
  private final ObservableList<Line> lines = FXCollections.observableArrayList();
  private final VBox sheet = new VBox();
  private final Label nothing = Controls.label("hint");
  private final StackPane body = new StackPane();

  ResultsView(ResultsModel model, LoadModel load, Texts texts, FlagWords words) {
    this.model = model;
    this.texts = texts;
    batch = BatchBox.of(model.batch(), texts.get("batch"), model::choose);
    Words trade = new Words(texts.locale());
    beside = new BesideView(texts, trade);
    table = SampleTable.of(texts, trade, words, lines);
    flags = new FlagsView(texts, words);
    getStyleClass().add("screen");
    sheet();
    LoadPane loads = new LoadPane(load, model, texts);
    FilesPane files = new FilesPane(model, texts);
    body.getChildren().setAll(sheet);
    VBox.setVgrow(body, Priority.ALWAYS);
    Segments panes =
        new Segments(
            texts,
            "pane.",
            List.of("sheet", "load", "files"),
            pane ->
                body.getChildren()
                    .setAll(
                        switch (pane) {
                          case "load" -> loads;
                          case "files" -> files;
                          default -> sheet;
                        }));
    panes.show("sheet");
    getChildren().addAll(head(panes), body);
    follow();
  }

  private HBox head(Segments panes) {
    HBox head =
        new HBox(
            Controls.whole(Controls.text(texts, "title", "title")),
            batch,
            state,
            Controls.spring(),
            panes);
    head.getStyleClass().add("level");
    return head;
  }

  private void sheet() {
    HBox upper = new HBox(chart, beside);
    HBox.setHgrow(chart, Priority.ALWAYS);
    HBox lower = new HBox(table, flags);
    HBox.setHgrow(table, Priority.ALWAYS);
    upper.getStyleClass().addAll("sheet", "results-upper");
    lower.getStyleClass().addAll("sheet", "results-lower");
    beside.getStyleClass().addAll("results-side", "tight");
    flags.getStyleClass().addAll("results-side", "tight");
    VBox.setVgrow(lower, Priority.ALWAYS);
    sheet.getStyleClass().add("sheet");
    sheet.getChildren().addAll(nothing, upper, lower);
    nothing.setId("nothing");
  }

  private void follow() {
    model.shown().subscribe(this::show);
    model.wanted().subscribe(this::want);
    table
        .getSelectionModel()
        .selectedItemProperty()
        .subscribe(line -> model.shown().get().sheet().ifPresent(all -> flags.show(all, line)));
  }

  private void want(String filter) {
    table.getItems().stream()
        .filter(line -> line.filter().equals(filter))
        .findFirst()
        .ifPresent(
            line -> {
              table.getSelectionModel().select(line);
              table.scrollTo(line);
            });
  }

  private void show(ResultsModel.Shown now) {
    nothing.setText(now.problem().map(this::words).orElseGet(() -> texts.get(empty(now))));
    boolean any = now.sheet().isPresent();
    Controls.shown(nothing, !any);
    sheet.getChildren().subList(1, 3).forEach(part -> part.setVisible(any));
    batch.setVisible(!model.batch().batches().isEmpty());
    state.getChildren().clear();
    now.sheet().ifPresent(this::show);
  }

  private String words(Problem problem) {
    return problem.what(texts.locale()) + "\n" + problem.next(texts.locale());
  }

  private static String empty(ResultsModel.Shown now) {
    return now.sheet().isPresent() ? "title" : "no.batch";
  }

  private void show(ResultSheet now) {
    state.getChildren().setAll(report(now));
    TimeChart time = now.report().chart();
    chart.show(
        time == null ? null : (w, h) -> ChartLayout.of(time, w, h, texts::tell),
        time == null ? texts.get("chart.none") : texts.get("chart", texts.tell(time.title())));
    beside.show(now);
    lines.setAll(now.lines());
    flags.show(now, null);
    want(model.wanted().get());
  }

  private HBox report(ResultSheet now) {
    int count = now.batch().releases().size();
    return count == 0
        ? Controls.chip(Tone.WAIT, Shape.RING, texts.get("draft"))
        : Controls.chip(Tone.GOOD, Shape.TICK, texts.get("released", now.report().number()));
  }
}
