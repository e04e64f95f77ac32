package org.siltbench.station.window.settings;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Form;

/** The label room: stock, printers, and the ruler that makes a printer true. */
final class LabelRoomPane extends ScrollPane {

  private final SettingsModel model;
  private final Texts texts;

  LabelRoomPane(SettingsModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    VBox cards = new VBox(what(), ruler());
    cards.getStyleClass().add("sheet");
    setContent(cards);
    setFitToWidth(true);
  }

  private ComboBox<String> choice(
      Prefs.Name name, javafx.collections.ObservableList<String> among) {
    ComboBox<String> box = new ComboBox<>(among);
    box.setEditable(true);
    box.setValue(model.like(name));
    box.getStyleClass().add("batch-choice");
    box.setOnAction(
        event -> Optional.ofNullable(box.getValue()).ifPresent(word -> model.like(name, word)));
    return box;
  }

  private VBox what() {
    TextField dpi = new TextField(model.like(Prefs.Name.DPI));
    dpi.setPrefColumnCount(5);
    dpi.setOnAction(event -> model.like(Prefs.Name.DPI, dpi.getText().strip()));
    dpi.focusedProperty()
        .subscribe(
            now -> {
              if (!now && !dpi.getText().strip().equals(model.like(Prefs.Name.DPI))) {
                model.like(Prefs.Name.DPI, dpi.getText().strip());
              }
            });
    HBox fields =
        new HBox(
            Controls.captioned(texts, "media", choice(Prefs.Name.MEDIA, model.media())),
            Controls.captioned(texts, "printer", choice(Prefs.Name.PRINTER, model.printers())),
            Controls.captioned(
                texts, "paper.printer", choice(Prefs.Name.PAPER_PRINTER, model.printers())),
            Controls.field(texts, "dpi", dpi));
    fields.getStyleClass().add("line");
    VBox card =
        new VBox(
            Controls.text(texts, "labels.hint", "hint"),
            fields,
            new OwnFilesLine(model, texts, this::stock));
    card.getStyleClass().add("card");
    return card;
  }

  /** The file of the stock that is set; built-in stock has none. */
  private String stock() {
    String like = model.like(Prefs.Name.MEDIA);
    return like.substring(like.lastIndexOf('/') + 1);
  }

  private VBox ruler() {
    Label said = Controls.label("row-small");
    said.setId("ruler.said");
    model.lengths().subscribe(said::setText);
    Form form =
        new Form(texts)
            .field("mm.across", 7)
            .field("mm.down", 7)
            .field("mm.left", 7)
            .field("mm.top", 7);
    VBox card =
        new VBox(
            Controls.text(texts, "ruler", "subtitle"),
            Controls.text(texts, "ruler.hint", "hint"),
            Controls.primary(texts, "ruler.draw", model::drawRuler),
            said,
            form,
            Controls.button(
                texts,
                "ruler.true",
                () ->
                    model.makeTrue(
                        List.of("mm.across", "mm.down", "mm.left", "mm.top").stream()
                            .map(form::get)
                            .toList())));
    card.getStyleClass().add("card");
    return card;
  }
}
