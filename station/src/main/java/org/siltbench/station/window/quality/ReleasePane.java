package org.siltbench.station.window.quality;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.siltbench.labels.chart.ChartLayout;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.ChartView;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.work.release.Readiness;
import org.siltbench.station.work.release.Readiness.Kind;

/** The balance's checks, the reports so far, and the release. */
final class ReleasePane extends VBox {

  private final QualityModel model;
  private final Texts texts;
  private final Moments moments;
  private final ChartView chart = new ChartView();
  private final VBox reports = new VBox();
  private final TextField number = new TextField();
  private final TextField accept = new TextField();
  private final TextField client = new TextField();
  private final CheckBox partial;
  private final Button go;

  ReleasePane(QualityModel model, Texts texts, Moments moments) {
    this.model = model;
    this.texts = texts;
    this.moments = moments;
    partial = new CheckBox(texts.get("partial"));
    partial.setId("partial");
    partial.setWrapText(true);
    go =
        Controls.primary(
            texts,
            "release",
            () -> model.release(number.getText(), partial.isSelected(), accept.getText()));
    go.setMaxWidth(Double.MAX_VALUE);
    chart.getStyleClass().add("quality-chart");
    reports.getStyleClass().add("small-rows");
    ScrollPane past = Controls.scroll(reports);
    getStyleClass().addAll("sheet", "quality-side");
    getChildren().addAll(chart, release(), past);
    model.readiness().subscribe(now -> now.ifPresent(this::show));
  }

  private Node release() {
    number.setPromptText(texts.get("number.next"));
    HBox paper =
        new HBox(
            Controls.field(texts, "client", client),
            Controls.button(texts, "report.write", () -> model.writeReport(client.getText())));
    paper.getStyleClass().add("line");
    VBox card =
        new VBox(
            Controls.field(texts, "number", number),
            Controls.field(texts, "accept", accept),
            partial,
            go,
            paper);
    card.getStyleClass().addAll("card", "quality-release");
    return card;
  }

  private void show(Readiness now) {
    ControlChart control = now.sheet().report().control();
    chart.show(
        control == null ? null : (w, h) -> ChartLayout.of(control, w, h, texts::tell),
        control == null
            ? texts.get("chart.none")
            : texts.get("chart", texts.tell(control.title())));
    boolean amends = !now.reports().isEmpty();
    go.setText(texts.get(amends ? "release.amended" : "release"));
    go.setAccessibleText(go.getText().replace("_", ""));
    partial.setDisable(now.count(Kind.OPEN) == 0);
    accept.setDisable(now.count(Kind.RULE) == 0);
    reports.getChildren().setAll(Controls.text(texts, "reports", "subtitle"));
    List<Node> rows = now.reports().stream().map(this::row).toList();
    reports.getChildren().addAll(rows);
    if (rows.isEmpty()) {
      reports.getChildren().add(Controls.text(texts, "reports.none", "hint"));
    }
  }

  private Node row(Readiness.Past past) {
    Label what = Controls.label("row-small");
    what.setText(
        past.replaces().isEmpty()
            ? past.report()
            : texts.get("report.replaces", past.report(), past.replaces()));
    Label who = Controls.label("hint");
    who.setText(texts.get("report.by", moments.at(past.at()), past.analyst(), past.approver()));
    VBox row = new VBox(what, who);
    if (!past.accepted().isEmpty()) {
      Label why = Controls.label("hint");
      why.setText(texts.get("report.accepted", past.accepted()));
      row.getChildren().add(why);
    }
    return row;
  }
}
