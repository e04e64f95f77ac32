package org.siltbench.station.command.calculate;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.siltbench.station.Problem;
import org.siltbench.station.table.Row;
import org.siltbench.station.table.Table;

/**
 * The measurements that limits rest on: {@code kind} (spike, blank) and {@code result}, or {@code
 * given} and {@code found}.
 *
 * @param spikes results of spiked samples, of one unit
 * @param blanks results of method blanks, of the same unit
 * @param given amounts given, of one unit
 * @param found what was found of each
 */
record LimitTable(
    List<Double> spikes, List<Double> blanks, List<Double> given, List<Double> found) {

  private static final int MOST = 100_000;

  /**
   * Reads a table.
   *
   * @throws Problem.WrongUse if it has neither pair of columns, or a cell is no number
   */
  static LimitTable read(Path file) throws IOException {
    LimitTable out =
        new LimitTable(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    try (Table table = Table.open(file)) {
      boolean calibration = table.column("given") >= 0;
      int first = table.require(calibration ? "given" : "kind");
      int second = table.require(calibration ? "found" : "result");
      for (int rows = 0; table.hasNext(); rows++) {
        Row row = table.next();
        if (rows == MOST) {
          throw new Problem.WrongUse(
              "The table " + file + " has more than " + MOST + " lines.", "Limits rest on fewer.");
        }
        if (!row.blank()) {
          out.take(row, first, second, calibration);
        }
      }
    }
    return out;
  }

  private void take(Row row, int first, int second, boolean calibration) {
    double value = number(row, second);
    if (calibration) {
      given.add(number(row, first));
      found.add(value);
      return;
    }
    switch (row.text(first).toLowerCase(Locale.ROOT)) {
      case "spike" -> spikes.add(value);
      case "blank" -> blanks.add(value);
      default -> throw row.wrong(first, "spike or blank");
    }
  }

  private static double number(Row row, int column) {
    String text = row.decimal(column, "a number").orElseThrow(() -> row.wrong(column, "a number"));
    return Double.parseDouble(text);
  }
}
