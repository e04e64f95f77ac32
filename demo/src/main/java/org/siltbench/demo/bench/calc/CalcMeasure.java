package org.siltbench.demo.bench.calc;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Methods;
import org.siltbench.calc.result.BatchCalculation;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.InputRow;
import org.siltbench.calc.result.ResultRow;

/** Runs the measures of the calculation. */
public final class CalcMeasure {

  private static final int TRIALS = 100_000;
  private static final int DOUBTFUL_ROWS = 5;

  private static final Method METHOD = Methods.presets().get("sm-2540d-23");
  private static final int CSV_ROUNDS = 3;

  private final int rows;
  private final int csvRows;
  private final int rounds;
  private final Clock clock = new Clock();
  private final Map<String, Map<String, Double>> figures = new LinkedHashMap<>();

  private CalcMeasure(List<String> args) {
    rows = option(args, "--rows", 100_000);
    csvRows = option(args, "--csv-rows", 1_000_000);
    rounds = option(args, "--rounds", 11);
  }

  /** Runs with {@code --rows}, {@code --csv-rows}, {@code --rounds}, {@code --json}. */
  public static String run(String... args) throws IOException {
    List<String> list = List.of(args);
    CalcMeasure measure = new CalcMeasure(list);
    measure.firstOrder();
    measure.distributions();
    measure.doubtfulRows();
    measure.csv();
    return list.contains("--json") ? measure.json() : measure.table();
  }

  private static int option(List<String> args, String name, int otherwise) {
    int at = args.indexOf(name);
    return at < 0 ? otherwise : Integer.parseInt(args.get(at + 1));
  }

  private void firstOrder() {
    List<InputRow> input = Rows.of(rows, Rows.VOLUME_U);
    PlainFirstOrder plain = new PlainFirstOrder(input);
    double[] s =
        clock.seconds(
            rounds,
            round -> once(input, true),
            round -> once(input, false),
            round -> twice(input),
            round -> plain.run(METHOD.uncertainty(), Rows.BALANCE));
    alike(once(input, true), plain.run(METHOD.uncertainty(), Rows.BALANCE));
    compare("first_order_full_budget", s[0] / rows, s[3] / rows);
    compare("first_order_without_written_budget", s[1] / rows, s[3] / rows);
    compare("first_order_full_budget_read_twice", s[2] / rows, s[3] / rows);
  }

  /** The plain loop is only worth a comparison where it comes to the same figures. */
  private static void alike(double ours, double plain) {
    if (!(Math.abs(ours - plain) <= 1e-9 * Math.abs(plain))) {
      throw new IllegalStateException("the plain loop's figures differ: " + plain + ", " + ours);
    }
  }

  private void distributions() {
    Trials trials = new Trials(TRIALS);
    double[] s = clock.seconds(3 * rounds, trials::library, trials::plain);
    compare("by_distributions", s[0], s[1]);
    s = clock.seconds(3 * rounds, trials::libraryWithInterval, trials::plainWithInterval);
    compare("by_distributions_with_interval", s[0], s[1]);
  }

  /** Rows whose volume is known to 10 % only: the calculation turns to distributions by itself. */
  private void doubtfulRows() {
    List<InputRow> input = Rows.of(DOUBTFUL_ROWS, 45);
    Trials plain = new Trials(TRIALS);
    double[] s = clock.seconds(rounds, round -> twice(input), plain::plainWithInterval);
    compare("batch_rows_by_distributions", s[0] / (DOUBTFUL_ROWS - 1), s[1]);
  }

  /** Goal: within 3 times of reading and writing. */
  private void csv() throws IOException {
    try (Csv csv = new Csv(csvRows, METHOD)) {
      double[] s = clock.seconds(CSV_ROUNDS, csv::calculate, csv::calculateHeldBack, csv::copy);
      compare("csv_rows", s[0] / csvRows, s[2] / csvRows);
      compare("csv_rows_to_standard_output", s[1] / csvRows, s[2] / csvRows);
    }
  }

  /** As a file is written that is thrown away should a row be at fault. */
  private static double once(List<InputRow> input, boolean budget) {
    double[] keep = new double[1];
    new BatchCalculation(METHOD, Rows.BALANCE)
        .runOnce(input::forEach, row -> keep[0] += sum(row, budget));
    return keep[0];
  }

  /** As for a reader who must not see a result before all rows are known to be sound. */
  private static double twice(List<InputRow> input) {
    double[] keep = new double[1];
    new BatchCalculation(METHOD, Rows.BALANCE)
        .run(input::forEach, row -> keep[0] += sum(row, true));
    return keep[0];
  }

  private static double sum(ResultRow row, boolean budget) {
    Concentration c = row.concentration();
    if (c == null) {
      return 0;
    }
    double sum = c.mgPerL() + c.expanded() + c.dof();
    if (budget) {
      for (double share : c.budget().shares()) {
        sum += share;
      }
    }
    return sum;
  }

  private void compare(String name, double seconds, double plain) {
    Map<String, Double> m = new LinkedHashMap<>();
    m.put("results_per_s", 1 / seconds);
    m.put("plain_loop_per_s", 1 / plain);
    m.put("times_plain", seconds / plain);
    figures.put(name, m);
  }

  private String json() {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("bench", "calc");
      json.writeNumberField("rows", rows);
      json.writeNumberField("csv_rows_in_table", csvRows);
      json.writeNumberField("rounds", rounds);
      json.writeNumberField("trials", TRIALS);
      json.writeNumberField("goal_times_plain", 2);
      json.writeNumberField("goal_csv_times_plain", 3);
      for (Map.Entry<String, Map<String, Double>> figure : figures.entrySet()) {
        json.writeObjectFieldStart(figure.getKey());
        for (Map.Entry<String, Double> value : figure.getValue().entrySet()) {
          json.writeNumberField(value.getKey(), Math.round(value.getValue() * 100) / 100.0);
        }
        json.writeEndObject();
      }
      json.writeNumberField("checksum", clock.kept());
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private String table() {
    StringBuilder out = new StringBuilder();
    figures.forEach(
        (name, f) ->
            out.append(
                String.format(
                    Locale.ROOT,
                    "%-36s %12.0f /s, plain loop %12.0f /s, %.2f times%n",
                    name,
                    f.get("results_per_s"),
                    f.get("plain_loop_per_s"),
                    f.get("times_plain"))));
    return out.toString();
  }
}
