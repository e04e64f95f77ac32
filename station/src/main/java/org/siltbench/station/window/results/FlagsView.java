package org.siltbench.station.window.results;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.flag.FlagWords;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.work.results.ResultSheet;
import org.siltbench.station.work.results.ResultSheet.Line;
import org.siltbench.station.work.results.ResultSheet.Seen;

/** The flags of the line chosen, or of the whole batch, in words. */
final class FlagsView extends VBox {

  private final Texts texts;
  private final FlagWords words;
  private final Label about = Controls.label("subtitle");
  private final VBox rows = new VBox();

  FlagsView(Texts texts, FlagWords words) {
    this.texts = texts;
    this.words = words;
    getStyleClass().add("card");
    rows.getStyleClass().add("small-rows");
    ScrollPane scroll = Controls.scroll(rows);
    getChildren().addAll(about, scroll);
  }

  void show(ResultSheet sheet, @Nullable Line chosen) {
    rows.getChildren().clear();
    if (chosen == null) {
      about.setText(texts.get("flags.batch"));
      flags(sheet.flags());
      sheet
          .open()
          .forEach((id, why) -> say(texts.get("flags.open", id, texts.get("why." + key(why)))));
    } else {
      String name = chosen.sample().isEmpty() ? chosen.filter() : chosen.sample();
      about.setText(texts.get("flags.of", name, chosen.filter()));
      chosen.holds().forEach(why -> say(texts.get("flags.held", why)));
      if (!chosen.released().isEmpty()) {
        say(texts.get("flags.released", chosen.released()));
      }
      flags(chosen.flags());
    }
    if (rows.getChildren().isEmpty()) {
      rows.getChildren().add(Controls.text(texts, "flags.none", "hint"));
    }
  }

  private static String key(String why) {
    return why.startsWith("rejected") ? "rejected" : why;
  }

  private void say(String text) {
    Label label = Controls.label();
    label.setText(text);
    rows.getChildren().add(label);
  }

  private void flags(List<Seen> flags) {
    flags.forEach(flag -> rows.getChildren().add(row(flag)));
  }

  private VBox row(Seen flag) {
    Label means = Controls.label();
    means.setText(words.means(flag));
    HBox chip =
        Controls.chip(
            FlagWords.tone(flag.weight()), FlagWords.shape(flag.weight()), words.name(flag));
    chip.setAccessibleText(words.weight(flag.weight()) + ": " + words.name(flag));
    VBox row = new VBox(chip, means);
    row.getStyleClass().add("close");
    return row;
  }
}
