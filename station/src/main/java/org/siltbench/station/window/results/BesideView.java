package org.siltbench.station.window.results;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.labels.report.TestReport.Blank;
import org.siltbench.labels.report.TestReport.Duplicate;
import org.siltbench.station.life.Role;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.look.Words;
import org.siltbench.station.work.results.ResultSheet;

/** Blanks and duplicates with their limits, beside the chart. */
final class BesideView extends VBox {

  private final Texts texts;
  private final Words words;
  private final VBox rows = new VBox();

  BesideView(Texts texts, Words words) {
    this.texts = texts;
    this.words = words;
    getStyleClass().add("card");
    rows.getStyleClass().add("small-rows");
    ScrollPane scroll = Controls.scroll(rows);
    getChildren().add(scroll);
  }

  void show(ResultSheet sheet) {
    rows.getChildren().setAll(Controls.text(texts, "blanks", "subtitle"));
    List<Blank> blanks = sheet.report().blanks();
    List<Duplicate> pairs = sheet.report().duplicates();
    add(blanks.stream().map(this::blank).toList(), "blanks.none");
    rows.getChildren().add(Controls.text(texts, "pairs", "subtitle"));
    add(pairs.stream().map(this::pair).toList(), "pairs.none");
  }

  private void add(List<? extends Node> found, String none) {
    rows.getChildren().addAll(found);
    if (found.isEmpty()) {
      rows.getChildren().add(Controls.text(texts, none, "hint"));
    }
  }

  private HBox blank(Blank blank) {
    String what = words.role(Role.of(blank.kind().replace(' ', '-')));
    String figures = texts.get("against", blank.filter(), blank.value(), blank.limit());
    return row(what, figures, blank.pass(), false);
  }

  private HBox pair(Duplicate pair) {
    boolean open = pair.limit().isEmpty();
    String figures =
        open ? texts.get("pair.open") : texts.get("pair.apart", pair.difference(), pair.limit());
    return row(
        pair.pair() + "  " + texts.get("pair.of", pair.first(), pair.second()),
        figures,
        pair.pass(),
        open);
  }

  private HBox row(String what, String figures, boolean pass, boolean open) {
    Label name = Controls.label("row-small");
    name.setText(what);
    Label said = Controls.label("hint");
    said.setText(figures);
    VBox both = new VBox(name, said);
    HBox.setHgrow(both, Priority.ALWAYS);
    HBox row = new HBox(both, chip(pass, open));
    row.getStyleClass().add("level");
    return row;
  }

  private HBox chip(boolean pass, boolean open) {
    if (open) {
      return Controls.chip(Tone.PLAIN, Shape.DOT, texts.get("compared.not"));
    }
    return pass
        ? Controls.chip(Tone.GOOD, Shape.TICK, texts.get("limit.within"))
        : Controls.chip(Tone.BAD, Shape.CROSS, texts.get("limit.out"));
  }
}
