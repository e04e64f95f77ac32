package org.siltbench.station.command.calculate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.detection.CalibrationLimits;
import org.siltbench.calc.detection.MethodDetectionLimit;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.station.Problem;

/**
 * What a table of measurements says of the least that can be told from nothing.
 *
 * @param document the figures, unrounded
 * @param lines the same in sentences
 */
record LimitReport(Map<String, @Nullable Object> document, List<String> lines) {

  private static final int DIGITS = 3;
  private static final int PERCENTILE_FROM = 101;

  /**
   * Limits from spikes and blanks (40 CFR 136 App. B, rev. 2) or from a calibration (ISO 11843-2).
   *
   * @param repeats how many measurements a result is the mean of, for the calibration
   * @param alpha probability of a false detection, for the calibration
   * @param beta probability of a miss, for the calibration
   * @throws Problem.WrongUse if the table does not hold enough for either
   */
  static LimitReport of(LimitTable table, int repeats, double alpha, double beta) {
    LimitReport report = new LimitReport(new LinkedHashMap<>(), new ArrayList<>());
    try {
      if (table.given().isEmpty()) {
        report.detection(table);
      } else {
        report.calibration(table, repeats, alpha, beta);
      }
    } catch (IllegalArgumentException e) {
      String said = String.valueOf(e.getMessage());
      throw new Problem.WrongUse(
          "No limit comes of this table: " + said + '.',
          "From spikes or blanks "
              + MethodDetectionLimit.FEWEST
              + " results of a kind are needed,"
              + " from a calibration 3 points of different amounts and a rising line.");
    }
    return report;
  }

  private void detection(LimitTable table) {
    MethodDetectionLimit spikes =
        table.spikes().isEmpty() ? null : MethodDetectionLimit.ofSpikes(array(table.spikes()));
    MethodDetectionLimit blanks =
        table.blanks().isEmpty() ? null : MethodDetectionLimit.ofBlanks(array(table.blanks()));
    if (spikes == null && blanks == null) {
      throw new IllegalArgumentException("it holds no line");
    }
    document.put("mdl_spikes", spikes == null ? null : told("spikes (MDLs)", spikes));
    document.put("mdl_blanks", blanks == null ? null : told("blanks (MDLb)", blanks));
    boolean many = table.blanks().size() >= PERCENTILE_FROM;
    if (many) {
      double rank = MethodDetectionLimit.percentileOfBlanks(array(table.blanks()));
      document.put("mdl_blanks_percentile", rank);
      lines.add("The 99th percentile of the blanks, allowed for more than 100: " + shown(rank));
    }
    MethodDetectionLimit decides =
        spikes == null || blanks == null
            ? (spikes == null ? blanks : spikes)
            : MethodDetectionLimit.greater(spikes, blanks);
    double limit = decides == null ? Double.NaN : decides.limit();
    document.put("mdl", limit);
    lines.add("Method detection limit, the greater of those there are: " + shown(limit));
  }

  private Map<String, Object> told(String name, MethodDetectionLimit limit) {
    double[] interval = limit.confidenceInterval();
    lines.add(
        String.format(
            Locale.ROOT,
            "From %d %s: mean %s, s %s, t %.3f, limit %s (95 %% interval %s to %s)",
            limit.n(),
            name,
            shown(limit.mean()),
            shown(limit.deviation()),
            limit.factor(),
            shown(limit.limit()),
            shown(interval[0]),
            shown(interval[1])));
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("n", limit.n());
    out.put("mean", limit.mean());
    out.put("s", limit.deviation());
    out.put("t", limit.factor());
    out.put("limit", limit.limit());
    out.put("low", interval[0]);
    out.put("high", interval[1]);
    return out;
  }

  private void calibration(LimitTable table, int repeats, double alpha, double beta) {
    CalibrationLimits limits =
        CalibrationLimits.of(array(table.given()), array(table.found()), repeats, alpha, beta);
    document.put("points", table.given().size());
    document.put("repeats", repeats);
    document.put("alpha", alpha);
    document.put("beta", beta);
    document.put("dof", limits.degreesOfFreedom());
    document.put("non_centrality", limits.nonCentrality());
    document.put("critical", limits.critical());
    document.put("detectable", limits.detectable());
    lines.add(
        "From a line through "
            + table.given().size()
            + " points, results being means of "
            + repeats
            + " (ISO 11843-2): critical value "
            + shown(limits.critical())
            + ", least detectable value "
            + shown(limits.detectable())
            + " in the unit of what was given");
  }

  private static String shown(double value) {
    return ForPeople.value(value, DIGITS, 0);
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(x -> x).toArray();
  }
}
