package org.siltbench.station.window.receipt;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.ScanLine;
import org.siltbench.station.window.look.Segments;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.look.Words;
import org.siltbench.station.work.paper.InPrint;
import org.siltbench.station.work.receipt.Box;

/** Left the box, right the notes of one bag, the file or the hands they pass through. */
final class ReceiptView extends HBox {

  private static final List<String> PARTS = List.of("notes", "file", "custody");

  private final ReceiptModel model;
  private final Texts texts;
  private final Words words;
  private final Grid<Box.Bag> grid;
  private final ScanLine scan;
  private final Label count = Controls.label("hint");
  private final Button take;
  private final StackPane part = new StackPane();
  private final Segments parts;
  private final NotesPane notes;
  private final ImportPane imports;
  private final CustodyPane custody;

  ReceiptView(ReceiptModel model, Desk desk) {
    this.model = model;
    this.texts = desk.texts(ReceiptView.class);
    this.words = new Words(desk.locale());
    this.grid = table();
    this.scan = new ScanLine(texts, "scan", typed -> Entered.take(desk, model, typed));
    this.take = Controls.primary(texts, "take", model::take);
    this.notes = new NotesPane(model, texts);
    this.imports = new ImportPane(model.imports(), texts);
    this.custody = new CustodyPane(model.custody(), desk);
    this.parts = new Segments(texts, "part.", PARTS, this::show);
    getStyleClass().addAll("screen", "halves");
    VBox side = new VBox(parts, part);
    VBox.setVgrow(part, Priority.ALWAYS);
    side.getStyleClass().add("side");
    HBox.setHgrow(side, Priority.ALWAYS);
    getChildren().setAll(box(), side);
    model.seen().subscribe(this::count);
    model.chosen().subscribe(this::chosen);
    model.notes().filter().subscribe(this::noted);
    show("notes");
  }

  private VBox box() {
    CheckBox goOn = Controls.check(texts, "go.on");
    goOn.selectedProperty().bindBidirectional(model.goOn);
    CheckBox missing = Controls.check(texts, "mark.missing");
    missing.selectedProperty().bindBidirectional(model.markMissing);
    HBox.setHgrow(scan, Priority.ALWAYS);
    VBox.setVgrow(grid, Priority.ALWAYS);
    VBox box =
        new VBox(
            Controls.text(texts, "title", "title"),
            scan,
            grid,
            count,
            Controls.acts(goOn, missing),
            Controls.acts(take));
    box.getStyleClass().addAll("list", "wide");
    return box;
  }

  private Grid<Box.Bag> table() {
    Grid<Box.Bag> table =
        new Grid<>(texts, "bags", "bags.none", model.bags())
            .column("filter", 2.6, bag -> InPrint.id(bag.filter()))
            .column("role", 2.3, this::role)
            .nodes("bag", 1.1, bag -> bag.scanned() ? Shape.TICK.node() : Controls.cell("–"))
            .nodes("standing", 3.6, this::standing)
            .chosen(bag -> model.choose(bag.filter()));
    table
        .getSelectionModel()
        .selectedItemProperty()
        .subscribe(
            bag -> {
              if (bag != null && !bag.filter().equals(model.chosen().get())) {
                model.choose(bag.filter());
              }
            });
    return table;
  }

  private String role(Box.Bag bag) {
    return bag.state().map(state -> words.role(state.role())).orElse("");
  }

  private Node standing(Box.Bag bag) {
    String word = texts.get("standing." + bag.standing());
    return switch (bag.standing()) {
      case FITS -> Controls.chip(Tone.GOOD, Shape.TICK, word);
      case ALREADY, UNUSED -> Controls.chip(Tone.PLAIN, Shape.RING, word);
      case LOOK -> Controls.chip(Tone.WARN, Shape.TRIANGLE, word);
      case HELD -> Controls.chip(Tone.WARN, Shape.LEVEL, word);
      case NO_NOTES -> Controls.chip(Tone.WAIT, Shape.DOT, word);
      case MISSING -> Controls.chip(Tone.WARN, Shape.RING, word);
      case NO_BAG, TWO_NOTES, REFUSED -> Controls.chip(Tone.BAD, Shape.CROSS, word);
    };
  }

  private void count(Optional<Box.Seen> seen) {
    int fits = seen.map(found -> found.found().accepted().size()).orElse(0);
    take.setText(texts.get("take.count", fits));
    take.setAccessibleText(take.getText().replace("_", ""));
    take.setDisable(fits == 0 && !model.markMissing.get());
    count.setText(
        seen.filter(found -> !found.bags().isEmpty())
            .map(
                found ->
                    texts.get(
                        "count",
                        found.bags().stream().filter(Box.Bag::scanned).count(),
                        found.count(Box.Standing.NO_NOTES),
                        found.count(Box.Standing.NO_BAG),
                        found.count(Box.Standing.TWO_NOTES),
                        found.count(Box.Standing.MISSING)))
            .orElse(""));
    reselect();
  }

  private void reselect() {
    model.bags().stream()
        .filter(bag -> bag.filter().equals(model.chosen().get()))
        .findFirst()
        .ifPresent(
            bag -> {
              grid.getSelectionModel().select(bag);
              grid.scrollTo(bag);
              notes.show(bag);
            });
  }

  private void chosen(String filter) {
    if (!filter.isEmpty()) {
      show("notes");
      reselect();
      notes.focus();
    }
  }

  /** Once the notes of a bag are kept, the next bag is scanned. */
  private void noted(String filter) {
    if (filter.isEmpty()) {
      scan.focus();
    }
  }

  private void show(String word) {
    parts.show(word);
    Node shown =
        switch (word) {
          case "file" -> imports;
          case "custody" -> custody;
          default -> notes;
        };
    part.getChildren().setAll(shown);
  }

  /** The one key: keeps the notes in front, else takes the box in. */
  boolean decide() {
    if (!model.notes().filter().get().isEmpty()) {
      model.notes().keep();
    } else {
      model.take();
    }
    return true;
  }
}
