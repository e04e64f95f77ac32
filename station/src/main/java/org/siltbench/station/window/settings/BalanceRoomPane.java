package org.siltbench.station.window.settings;

import javafx.scene.control.ListView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;

/** The balance room: which balance, and the formats that were learned. */
final class BalanceRoomPane extends VBox {

  private final TextField spec = new TextField();

  BalanceRoomPane(SettingsModel model, Texts texts) {
    getStyleClass().add("sheet");
    spec.setText(model.like(Prefs.Name.BALANCE));
    VBox field = Controls.field(texts, "balance", spec);
    HBox.setHgrow(field, Priority.ALWAYS);
    HBox ask =
        new HBox(
            field,
            Controls.primary(texts, "balance.use", () -> model.useBalance(spec.getText())),
            Controls.button(texts, "balance.find", model::find));
    ask.getStyleClass().add("line");
    TextField scanner = new TextField(model.like(Prefs.Name.SCANNER));
    HBox scans =
        new HBox(
            Controls.field(texts, "scanner", scanner),
            Controls.button(
                texts,
                "scanner.use",
                () -> model.like(Prefs.Name.SCANNER, scanner.getText().strip())));
    scans.getStyleClass().add("line");
    HBox.setHgrow(scans.getChildren().get(0), Priority.ALWAYS);
    VBox balance = new VBox(Controls.text(texts, "balance.hint", "hint"), ask, scans);
    balance.getStyleClass().add("card");
    VBox formats = formats(model, texts);
    VBox.setVgrow(formats, Priority.ALWAYS);
    getChildren().addAll(balance, formats);
  }

  private VBox formats(SettingsModel model, Texts texts) {
    ListView<String> list = new ListView<>(model.formats());
    list.setId("formats");
    list.setAccessibleText(texts.get("formats"));
    list.setPlaceholder(Controls.text(texts, "formats.none", "hint"));
    TextArea text = new TextArea();
    text.setEditable(false);
    text.setAccessibleText(texts.get("format.text"));
    text.setPromptText(texts.get("format.text"));
    text.getStyleClass().add("settings-text");
    model.formatText().subscribe(text::setText);
    list.getSelectionModel()
        .selectedItemProperty()
        .subscribe(
            file -> {
              if (file != null) {
                model.showFormat(file);
              }
            });
    HBox both = new HBox(list, text);
    both.getStyleClass().add("sheet");
    HBox.setHgrow(text, Priority.ALWAYS);
    VBox.setVgrow(both, Priority.ALWAYS);
    VBox card =
        new VBox(
            Controls.text(texts, "formats", "subtitle"),
            both,
            Controls.button(
                texts,
                "format.use",
                () -> {
                  String file = list.getSelectionModel().getSelectedItem();
                  if (file != null) {
                    model.useFormat(file, spec.getText());
                  }
                }),
            new OwnFilesLine(
                model, texts, () -> String.valueOf(list.getSelectionModel().getSelectedItem())));
    card.getStyleClass().add("card");
    return card;
  }
}
