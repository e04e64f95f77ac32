package org.siltbench.station.window.settings;

import java.util.List;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Segments;

/** Look, size, language, sound and the one key; each is kept when it is chosen. */
final class LooksPane extends ScrollPane {

  private final SettingsModel model;
  private final Texts texts;

  LooksPane(SettingsModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    VBox language =
        row("language.caption", "language.", Prefs.Name.LANGUAGE, List.of("", "en", "de"));
    language.getChildren().add(Controls.button(texts, "again", model::openAgain));
    VBox rows =
        new VBox(
            row("look.caption", "theme.", Prefs.Name.THEME, List.of("light", "dark", "contrast")),
            row(
                "zoom.caption",
                "zoom.",
                Prefs.Name.ZOOM,
                List.of("80", "100", "120", "150", "200")),
            language,
            row("sound.caption", "sound.", Prefs.Name.SOUND, List.of("on", "off")),
            row("key.caption", "key.", Prefs.Name.KEY, SettingsModel.KEYS));
    rows.getStyleClass().add("sheet");
    setContent(rows);
    setFitToWidth(true);
  }

  private VBox row(String caption, String prefix, Prefs.Name name, List<String> words) {
    Segments choice = new Segments(texts, prefix, words, word -> model.like(name, word));
    choice.show(model.like(name));
    VBox row = new VBox(Controls.text(texts, caption, "row-title"), choice);
    row.getStyleClass().add("card");
    return row;
  }
}
