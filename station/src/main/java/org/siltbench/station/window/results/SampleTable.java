package org.siltbench.station.window.results;

import javafx.collections.ObservableList;
import javafx.scene.control.TableRow;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.flag.FlagWords;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Words;
import org.siltbench.station.work.results.ResultSheet.Line;
import org.siltbench.station.work.results.ResultSheet.Seen;
import org.siltbench.station.work.results.ResultSheet.Weight;

/** The table of results, one line a filter. */
final class SampleTable {

  private SampleTable() {}

  static Grid<Line> of(Texts texts, Words words, FlagWords flagWords, ObservableList<Line> lines) {
    Grid<Line> table =
        new Grid<>(texts, "table", "table.none", lines)
            .column("sample", 13, line -> name(line, words))
            .column("site", 12, Line::site)
            .column("collected", 14, Line::collected)
            .column("volume", 8, Line::volume)
            .column("residue", 12, Line::residue)
            .column("conc", 8, Line::conc)
            .column("expanded", 7, Line::expanded)
            .column("constant", 10, line -> texts.get("constant." + line.constant()))
            .column("flags", 16, line -> flags(line, texts, flagWords));
    table.getStyleClass().add("tight");
    table.setRowFactory(made -> new Row());
    return table;
  }

  private static String name(Line line, Words words) {
    return line.sample().isEmpty() ? words.role(line.role()) : line.sample();
  }

  private static String flags(Line line, Texts texts, FlagWords words) {
    StringBuilder out = new StringBuilder();
    if (!line.holds().isEmpty()) {
      out.append(texts.get("held")).append(' ');
    }
    for (Seen flag : line.flags()) {
      out.append(out.isEmpty() || out.toString().endsWith(" ") ? "" : ", ")
          .append(words.name(flag));
    }
    return out.toString();
  }

  /** A row whose edge tells how much its weightiest flag matters; the words say the same. */
  private static final class Row extends TableRow<Line> {
    @Override
    protected void updateItem(Line line, boolean empty) {
      super.updateItem(line, empty);
      getStyleClass().removeAll("row-warn", "row-stop");
      if (!empty && line != null) {
        line.worst()
            .filter(w -> w != Weight.NOTE)
            .ifPresent(w -> getStyleClass().add(w == Weight.STOP ? "row-stop" : "row-warn"));
      }
    }
  }
}
