package org.siltbench.station.window.log;

import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.window.look.Sheet;
import org.siltbench.station.work.log.EntryList;

/** One entry, field by field, what was struck beside what is in force; and its correction. */
final class EntryPane extends VBox {

  private final Texts texts;
  private final EntryWords words;
  private final Moments moments;
  private final Label title = Controls.label("subtitle");
  private final Label about = Controls.label("hint");
  private final ObservableList<EntryList.Field> fields = FXCollections.observableArrayList();

  EntryPane(LogModel model, Texts texts, EntryWords words, Moments moments) {
    this.texts = texts;
    this.words = words;
    this.moments = moments;
    CorrectModel correction = model.correction();
    title.setId("entry-title");
    Grid<EntryList.Field> grid =
        new Grid<EntryList.Field>(texts, "fields", "fields.none", fields)
            .column("field", 3, field -> words.field(field.name()))
            .nodes("value", 6, EntryPane::value)
            .chosen(field -> correction.pick(field.name()));
    VBox.setVgrow(grid, Priority.ALWAYS);
    Sheet form =
        new Sheet(texts, 4, correction::look)
            .choice("correct", correction.fields(), words::field, correction.field)
            .text("instead", correction.value)
            .text("reason", correction.amend().reason, 2);
    AmendPane amend =
        new AmendPane(
            correction.amend(),
            texts,
            Controls.button(texts, "look", correction::look),
            Controls.button(texts, "look.void", correction::lookTakenBack));
    getStyleClass().addAll("card", "form");
    getChildren().setAll(title, about, grid, form, amend);
    model.chosen().subscribe(this::show);
  }

  /** As it stands in the ledger, in its stable words: a correction is typed in the same. */
  private static Node value(EntryList.Field field) {
    HBox box = new HBox();
    box.getStyleClass().addAll("line", "as-recorded");
    for (String old : field.struck()) {
      Label label = Controls.cell(old.isEmpty() ? "–" : old);
      label.getStyleClass().add("struck");
      box.getChildren().add(label);
    }
    Label now = Controls.cell(field.value());
    if (!field.struck().isEmpty()) {
      now.getStyleClass().add("replaced");
    }
    box.getChildren().add(now);
    return box;
  }

  private void show(Optional<EntryList.Shown> shown) {
    fields.setAll(shown.map(EntryList.Shown::fields).orElse(List.of()));
    title.setText(
        shown
            .map(one -> texts.get("entry.is", words.kind(one.entry().kind()), ref(one)))
            .orElse(texts.get("entry.none")));
    about.setText(
        shown
            .map(
                one ->
                    texts.get(
                        one.voided() ? "entry.void" : "entry.by",
                        moments.at(one.entry().at()),
                        one.entry().by()))
            .orElse(""));
  }

  private static String ref(EntryList.Shown shown) {
    return shown.entry().ref().toString();
  }
}
