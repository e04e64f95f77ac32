package org.siltbench.station.window.log;

import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.log.LogModel.Part;
import org.siltbench.station.window.look.Choices;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.window.look.Parts;
import org.siltbench.station.window.look.ScanLine;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.work.log.EntryList;

/** Left the entries, right what they say and what is done about them. */
final class LogView extends HBox {

  private final LogModel model;
  private final Texts texts;
  private final EntryWords words;
  private final Moments moments;
  private final Grid<EntryList.Shown> grid;

  LogView(LogModel model, Desk desk) {
    this.model = model;
    this.texts = desk.texts(LogView.class);
    this.words = new EntryWords(texts);
    this.moments = new Moments(desk.clock(), desk.locale());
    this.grid = table();
    Map<Part, Node> panes =
        Map.of(
            Part.READ, new EntryPane(model, texts, words, moments),
            Part.SWAP, new SwapPane(model, desk),
            Part.FILTER, new FilterPane(model, desk),
            Part.PROVE, new ProvePane(model.prove(), texts));
    getStyleClass().addAll("screen", "halves");
    getChildren().setAll(list(desk), new Parts<>(texts, "part.", Part.class, panes, model.part()));
    model.chosen().subscribe(this::select);
  }

  private VBox list(Desk desk) {
    ComboBox<BatchState> batch = Choices.of(model.batches(), BatchState::name);
    batch.valueProperty().bindBidirectional(model.batch());
    batch.getStyleClass().add("long");
    ScanLine scan = new ScanLine(texts, "scan", typed -> Entered.take(desk, model, typed));
    HBox.setHgrow(scan, Priority.ALWAYS);
    Button all = Controls.button(texts, "all", model::all);
    all.disableProperty().bind(model.filter().isEmpty());
    VBox.setVgrow(grid, Priority.ALWAYS);
    VBox list =
        new VBox(
            Controls.text(texts, "title", "title"),
            Controls.line(Controls.captioned(texts, "batch", batch), scan, all),
            grid);
    list.getStyleClass().addAll("list", "wide");
    return list;
  }

  private Grid<EntryList.Shown> table() {
    Grid<EntryList.Shown> table =
        new Grid<EntryList.Shown>(texts, "entries", "entries.none", model.entries())
            .nodes("what", 9.3, this::lines)
            .nodes("state", 1.25, LogView::state)
            .chosen(model::choose);
    table
        .getSelectionModel()
        .selectedItemProperty()
        .subscribe(
            shown -> {
              if (shown != null) {
                model.choose(shown);
              }
            });
    return table;
  }

  /** What it says; below it the kind, when and who. */
  private Node lines(EntryList.Shown shown) {
    Entry entry = shown.entry();
    String kind = words.kind(entry.kind());
    String summary = words.summary(shown);
    String when = moments.at(entry.at()) + ", " + entry.by();
    return summary.isEmpty()
        ? Controls.cell(kind, when)
        : Controls.cell(summary, kind + ", " + when);
  }

  private static Node state(EntryList.Shown shown) {
    if (shown.voided()) {
      return mark(Tone.BAD, Shape.CROSS);
    }
    return shown.corrected() ? mark(Tone.WARN, Shape.TRIANGLE) : Controls.cell("");
  }

  private static Node mark(Tone tone, Shape shape) {
    return shape.node(tone.style());
  }

  private void select(Optional<EntryList.Shown> shown) {
    shown.ifPresent(
        one -> {
          Entry entry = one.entry();
          model.entries().stream()
              .filter(row -> row.entry().ref().equals(entry.ref()))
              .findFirst()
              .ifPresent(row -> grid.getSelectionModel().select(row));
        });
  }
}
