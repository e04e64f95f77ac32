package org.siltbench.station.window.results;

import java.nio.file.Path;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Chooser;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.DoingView;
import org.siltbench.station.window.look.FileField;

/** Writes tables, report and pictures into a folder, and lists what was written. */
final class FilesPane extends VBox {

  private final ResultsModel model;
  private final TextField folder = new FileField();
  private final TextField client = new TextField();
  private final VBox written = new VBox();

  FilesPane(ResultsModel model, Texts texts) {
    this.model = model;
    getStyleClass().add("sheet");
    HBox where = Chooser.beside(texts, "folder", folder, Chooser.Kind.FOLDER);
    HBox fields = new HBox(where, Controls.field(texts, "client", client));
    fields.getStyleClass().add("level");
    VBox card =
        new VBox(
            Controls.text(texts, "files.hint", "hint"),
            fields,
            Controls.primary(
                texts, "files.write", () -> model.write(folder.getText(), client.getText())),
            new DoingView(texts, model.doing(), step -> texts.get("doing." + step)));
    card.getStyleClass().add("card");
    ScrollPane scroll = Controls.scroll(written);
    getChildren().addAll(card, scroll);
    model.batch().batch().subscribe(one -> folder.setText(model.usualFolder()));
    model.files().addListener((ListChangeListener<Path>) change -> list());
  }

  private void list() {
    written.getChildren().setAll(model.files().stream().map(FilesPane::row).toList());
  }

  private static Label row(Path file) {
    Label label = Controls.label();
    label.setText(String.valueOf(file.getFileName()));
    return label;
  }
}
