package org.siltbench.station.work.check;

import java.util.EnumSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.control.IndividualsChart;
import org.siltbench.calc.control.RunRule;
import org.siltbench.calc.control.RunRules;
import org.siltbench.calc.reason.Reason;
import org.siltbench.labels.PapersSay;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.station.life.BalanceState.Check;

/** The control chart of a balance's checks, and the run rules along it. */
public final class CheckChart {

  /** Fewer errors give no limits worth drawing. */
  static final int ENOUGH_FOR_LIMITS = 8;

  private CheckChart() {}

  /** The chart, with limits of its own as soon as there are enough checks; null without checks. */
  public static @Nullable ControlChart of(List<Check> checks) {
    if (checks.isEmpty()) {
      return null;
    }
    List<ControlChart.Point> points =
        checks.stream().map(c -> new ControlChart.Point(c.at(), error(c))).toList();
    double limit = checks.get(checks.size() - 1).fields().number("limit_mg", 0);
    if (points.size() < ENOUGH_FOR_LIMITS) {
      return new ControlChart(title(checks), "mg", 0, null, null, limit, points);
    }
    IndividualsChart chart = IndividualsChart.of(errors(checks));
    return new ControlChart(
        title(checks), "mg", chart.centre(), chart.lower(), chart.upper(), limit, points);
  }

  /** The run rules that are broken; none while there are too few checks for limits. */
  static List<RunRules.Signal> signals(List<Check> checks) {
    if (checks.size() < ENOUGH_FOR_LIMITS) {
      return List.of();
    }
    double[] errors = errors(checks);
    IndividualsChart chart = IndividualsChart.of(errors);
    return RunRules.signals(errors, chart.centre(), chart.sigma(), EnumSet.allOf(RunRule.class));
  }

  private static double[] errors(List<Check> checks) {
    return checks.stream().mapToDouble(CheckChart::error).toArray();
  }

  private static double error(Check check) {
    return check.fields().number("error_mg", 0);
  }

  private static Reason title(List<Check> checks) {
    List<String> weights =
        checks.stream().map(check -> check.fields().text("weight")).distinct().toList();
    return PapersSay.CHART_CHECKS.with(String.join(", ", weights));
  }
}
