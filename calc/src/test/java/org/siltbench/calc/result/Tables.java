package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Presets;

/**
 * Small tables for tests: comma-separated lines with a header, and methods with changed numbers.
 */
final class Tables {

  private Tables() {}

  /** A preset with some of its lines replaced, as {@code "u_mass_mg = 0.1"}. */
  static Method method(String key, String... lines) {
    String text = Method.parse(Presets.text(key)).text();
    for (String line : lines) {
      String name = line.substring(0, line.indexOf(" ="));
      text = text.replaceFirst("(?m)^" + name + " = .*$", line);
    }
    return Method.parse(text);
  }

  /** No uncertainty but the masses' 0.1 mg each and the stated volume's. */
  static Method plain(String... lines) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "u_mass_mg = 0.1",
                "u_volume_reading_ml = 0",
                "u_volume_calibration_pct = 0",
                "u_volume_temperature_pct = 0",
                "blank_min_count = 0",
                "duplicate_every = 0"));
    all.addAll(Arrays.asList(lines));
    return method("sm-2540d-23", all.toArray(String[]::new));
  }

  static List<InputRow> rows(String... lines) {
    InputColumns columns = new InputColumns(List.of(lines[0].split(",", -1)), 1);
    List<InputRow> rows = new ArrayList<>();
    for (int i = 1; i < lines.length; i++) {
      List<RowFault> faults = new ArrayList<>();
      rows.add(columns.read(List.of(lines[i].split(",", -1)), i + 1, faults));
      if (!faults.isEmpty()) {
        throw new InputFaults(faults, faults.size());
      }
    }
    return rows;
  }

  record Outcome(List<ResultRow> rows, BatchReport report) {

    ResultRow row(String filter) {
      return rows.stream().filter(r -> r.input().filter().equals(filter)).findFirst().orElseThrow();
    }

    Concentration concentration(String filter) {
      Concentration c = row(filter).concentration();
      if (c == null) {
        throw new AssertionError("no concentration for " + filter);
      }
      return c;
    }
  }

  static Outcome calculate(Method method, List<InputRow> rows) {
    return calculate(method, null, rows);
  }

  static Outcome calculate(Method method, BalanceRecord balance, List<InputRow> rows) {
    List<ResultRow> results = new ArrayList<>();
    BatchReport report = new BatchCalculation(method, balance).run(rows::forEach, results::add);
    return new Outcome(results, report);
  }

  static Outcome calculate(Method method, String... lines) {
    return calculate(method, rows(lines));
  }
}
