package org.siltbench.station.window.receipt;

import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Chooser;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.FileField;
import org.siltbench.station.window.look.FocusScroll;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.work.exchange.Doubt;
import org.siltbench.station.work.exchange.Heading;
import org.siltbench.station.work.exchange.Preview;

/** A file of field notes: what its columns are taken for, what is doubtful, and its lines. */
final class ImportPane extends VBox {

  private final ImportModel model;
  private final Texts texts;
  private final VBox found = new VBox();
  private final Label about = Controls.label("hint");
  private final ObservableList<Heading> headings = FXCollections.observableArrayList();
  private final Button take;

  ImportPane(ImportModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    this.take = Controls.primary(texts, "import.take", model::take);
    take.setId("import-take");
    FileField file = new FileField();
    file.textProperty().bindBidirectional(model.file);
    file.setOnAction(event -> model.open());
    HBox field = Chooser.beside(texts, "file", file, Chooser.Kind.FILE);
    Grid<Heading> table =
        new Grid<Heading>(texts, "headings", "headings.none", headings)
            .column("name", 3, Heading::name)
            .column("means", 3, this::means)
            .column("unit", 1, Heading::unit);
    table.setPrefHeight(200);
    found.getStyleClass().add("form");
    FocusScroll scroll = new FocusScroll(found);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getStyleClass().addAll("card", "form");
    getChildren()
        .setAll(
            Controls.line(field, Controls.button(texts, "import.read", model::open)),
            about,
            table,
            scroll,
            Controls.acts(take));
    model.preview().subscribe(this::show);
  }

  private String means(Heading heading) {
    return texts.get("column.is." + heading.column());
  }

  private void show(Optional<Preview> preview) {
    headings.clear();
    found.getChildren().clear();
    about.setText(texts.get("import.hint"));
    take.setDisable(preview.filter(now -> now.doubts().isEmpty()).isEmpty());
    preview.ifPresent(this::show);
  }

  private void show(Preview preview) {
    headings.setAll(preview.headings().stream().filter(h -> !h.name().isEmpty()).toList());
    about.setText(
        texts.get(
            "import.is",
            preview.charset(),
            texts.get("separator." + preview.separator()),
            preview.rows().size(),
            preview.doubts().size()));
    preview.doubts().forEach(doubt -> found.getChildren().add(row(preview, doubt)));
    for (Words note : preview.notes()) {
      Label label = Controls.label("hint");
      label.setText(texts.say(note));
      found.getChildren().add(label);
    }
  }

  private Node row(Preview preview, Doubt doubt) {
    Label what = Controls.label();
    what.setText(
        doubt.line() == 0
            ? texts.say(doubt.what())
            : texts.get("doubt.line", doubt.line(), doubt.column(), doubt.what()));
    VBox said = new VBox(what);
    said.getStyleClass().add("said");
    if (doubt.settle().isEmpty()) {
      said.getChildren().add(Controls.text(texts, "doubt.file", "hint"));
    } else {
      said.getChildren().add(settle(preview, doubt));
    }
    HBox.setHgrow(said, Priority.ALWAYS);
    HBox row = new HBox(Shape.TRIANGLE.node("row-shape"), said);
    row.getStyleClass().addAll("row", "card", Tone.WARN.style());
    return row;
  }

  private Node settle(Preview preview, Doubt doubt) {
    return Controls.acts(
        ImportModel.answers(preview, doubt).stream().map(this::button).toArray(Node[]::new));
  }

  private Button button(String answer) {
    Button button = Controls.button(texts, "settle", () -> model.settle(answer));
    button.setId("settle-" + answer.replaceAll("[^A-Za-z0-9]+", "-"));
    button.setText(answer);
    button.setMnemonicParsing(false);
    button.setAccessibleText(texts.get("settle.with", answer));
    return button;
  }
}
