package org.siltbench.station.window.quality;

import java.util.List;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.labels.report.TestReport;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.flag.FlagWords;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.work.receipt.Condition;
import org.siltbench.station.work.release.Readiness;
import org.siltbench.station.work.release.Readiness.Kind;
import org.siltbench.station.work.release.Readiness.Question;
import org.siltbench.station.work.results.ResultSheet;
import org.siltbench.station.work.results.ResultSheet.Line;
import org.siltbench.station.work.results.ResultSheet.Seen;

/** Tallies, the questions that stand in the way, the flags in words; holds are set here. */
final class FindingsPane extends VBox {

  private final QualityModel model;
  private final Texts texts;
  private final FlagWords words;
  private final FlowPane tallies = new FlowPane();
  private final ObservableList<Question> questions = FXCollections.observableArrayList();
  private final ObservableList<Line> lines = FXCollections.observableArrayList();
  private final Grid<Line> filters;
  private final TextField reason = new TextField();
  private final VBox flags = new VBox();

  FindingsPane(QualityModel model, Texts texts, FlagWords words) {
    this.model = model;
    this.texts = texts;
    this.words = words;
    getStyleClass().add("sheet");
    tallies.getStyleClass().add("flow");
    flags.getStyleClass().add("small-rows");
    filters =
        new Grid<>(texts, "filters", "filters.none", lines)
            .column("filter", 26, Line::filter)
            .column("sample", 21, Line::sample)
            .column("conc", 14, Line::conc)
            .column("holds", 39, line -> holds(line));
    filters.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
    filters.getStyleClass().add("tight");
    HBox lower = new HBox(filters, flags());
    lower.getStyleClass().add("sheet");
    HBox.setHgrow(filters, Priority.ALWAYS);
    VBox.setVgrow(lower, Priority.ALWAYS);
    getChildren().addAll(tallies, questions(), lower, holds());
    model.readiness().subscribe(now -> now.ifPresent(this::show));
  }

  private Node questions() {
    Grid<Question> table =
        new Grid<>(texts, "questions", "questions.none", questions)
            .nodes("kind", 18, this::kind)
            .column("filter", 16, Question::filter)
            .column("sample", 12, Question::sample)
            .column("why", 54, this::why);
    table.getStyleClass().addAll("tight", "quality-questions");
    return table;
  }

  private Node kind(Question question) {
    String word = texts.get("kind." + question.kind().name());
    return question.kind() == Kind.RULE
        ? Controls.chip(Tone.BAD, Shape.CROSS, word)
        : Controls.chip(Tone.WARN, Shape.TRIANGLE, word);
  }

  private String holds(Line line) {
    return texts.say(Words.joined("; ", line.holds().stream().map(Condition::told).toList()));
  }

  private String why(Question question) {
    return texts.say(question.why());
  }

  private Node flags() {
    ScrollPane scroll = Controls.scroll(flags);
    scroll.getStyleClass().add("quality-flags");
    return scroll;
  }

  private Node holds() {
    VBox field = Controls.field(texts, "reason", reason);
    HBox.setHgrow(field, Priority.ALWAYS);
    HBox row =
        new HBox(
            field,
            Controls.button(texts, "hold", () -> hold(false)),
            Controls.button(texts, "lift", () -> hold(true)));
    row.getStyleClass().add("line");
    return row;
  }

  private void hold(boolean lift) {
    List<String> chosen =
        filters.getSelectionModel().getSelectedItems().stream().map(Line::filter).toList();
    model.hold(chosen, lift, reason.getText());
  }

  private void show(Readiness now) {
    questions.setAll(now.questions());
    lines.setAll(now.sheet().lines());
    tally(now.sheet());
    flags.getChildren().setAll(Controls.text(texts, "flags", "subtitle"));
    now.sheet().flags().forEach(this::flag);
    now.sheet().allFlags().forEach(this::flag);
    if (flags.getChildren().size() == 1) {
      flags.getChildren().add(Controls.text(texts, "flags.none", "hint"));
    }
  }

  private void tally(ResultSheet sheet) {
    TestReport report = sheet.report();
    List<TestReport.Blank> controls =
        report.blanks().stream().filter(b -> b.kind().equals("control")).toList();
    List<TestReport.Blank> blanks =
        report.blanks().stream().filter(b -> !b.kind().equals("control")).toList();
    tallies
        .getChildren()
        .setAll(
            tile("tally.blanks", within(blanks), blanks.size()),
            tile("tally.controls", within(controls), controls.size()),
            tile(
                "tally.pairs",
                report.duplicates().stream().filter(TestReport.Duplicate::pass).count(),
                report.duplicates().size()),
            tile("tally.constant", constant(sheet), sheet.lines().size()));
  }

  private static long within(List<TestReport.Blank> blanks) {
    return blanks.stream().filter(TestReport.Blank::pass).count();
  }

  private static long constant(ResultSheet sheet) {
    return sheet.lines().stream().filter(line -> line.constant().equals("yes")).count();
  }

  private Node tile(String key, long good, long all) {
    Tone tone = all == 0 ? Tone.PLAIN : good == all ? Tone.GOOD : Tone.WARN;
    Shape shape = all == 0 ? Shape.RING : good == all ? Shape.TICK : Shape.TRIANGLE;
    Label count = Controls.label("row-title");
    count.setText(all == 0 ? texts.get("tally.none") : texts.get("tally.of", good, all));
    VBox said = new VBox(Controls.text(texts, key, "caption"), count);
    HBox tile = new HBox(shape.node("row-shape"), said);
    tile.getStyleClass().addAll("card", "level", tone.style(), "quality-tile");
    tile.setAccessibleText(texts.get(key) + ": " + count.getText());
    return tile;
  }

  private void flag(Seen seen) {
    Label means = Controls.label();
    means.setText(words.means(seen));
    VBox row =
        new VBox(
            Controls.chip(
                FlagWords.tone(seen.weight()), FlagWords.shape(seen.weight()), words.name(seen)),
            means);
    row.getStyleClass().add("close");
    flags.getChildren().add(row);
  }
}
