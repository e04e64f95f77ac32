package org.siltbench.station.window.settings;

import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;

/** The methods and their numbers; an own one begins as a changed copy. */
final class MethodsPane extends VBox {

  /** The file of the method that is chosen. */
  private static String chosen(Grid<SettingsModel.Known> table) {
    SettingsModel.Known known = table.getSelectionModel().getSelectedItem();
    return known == null ? "" : known.key() + ".method";
  }

  MethodsPane(SettingsModel model, Texts texts) {
    Grid<SettingsModel.Known> table =
        new Grid<>(texts, "methods", "methods.none", model.methods())
            .column("key", 22, SettingsModel.Known::key)
            .column("method", 38, SettingsModel.Known::title)
            .column("standard", 40, SettingsModel.Known::standard);
    table.getStyleClass().add("tight");
    TextArea text = new TextArea();
    text.setId("method.text");
    text.setAccessibleText(texts.get("method.text"));
    text.setPromptText(texts.get("method.text"));
    text.getStyleClass().add("settings-text");
    table
        .getSelectionModel()
        .selectedItemProperty()
        .subscribe(known -> text.setText(known == null ? "" : known.text()));
    TextField key = new TextField();
    HBox keep =
        new HBox(
            Controls.field(texts, "method.key", key),
            Controls.primary(
                texts, "method.save", () -> model.saveMethod(key.getText(), text.getText())));
    keep.getStyleClass().add("line");
    VBox.setVgrow(table, Priority.ALWAYS);
    VBox.setVgrow(text, Priority.ALWAYS);
    getStyleClass().add("sheet");
    getChildren()
        .addAll(
            table,
            Controls.text(texts, "methods.hint", "hint"),
            text,
            keep,
            new OwnFilesLine(model, texts, () -> chosen(table)));
  }
}
