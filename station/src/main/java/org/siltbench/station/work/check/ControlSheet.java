package org.siltbench.station.work.check;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.control.Cusum;
import org.siltbench.calc.control.Ewma;
import org.siltbench.calc.control.IndividualsChart;
import org.siltbench.calc.control.RunRule;
import org.siltbench.calc.control.RunRules;

/**
 * A series of values held against its own spread: individuals and moving range with the run rules,
 * EWMA and CUSUM.
 *
 * @param title what the values are
 * @param points in the order of time
 * @param limits the limits; null with fewer than 8 values, or where all are equal
 * @param signals what is out, in the order of time
 */
public record ControlSheet(
    String title, List<Point> points, @Nullable Limits limits, List<Signal> signals) {

  private static final int ENOUGH = CheckChart.ENOUGH_FOR_LIMITS;
  private static final double LAMBDA = 0.2;
  private static final double WIDTH = 3;
  private static final double ALLOWANCE = 0.5;
  private static final double DECISION = 5;

  /** Copies the lists. */
  public ControlSheet {
    points = List.copyOf(points);
    signals = List.copyOf(signals);
  }

  /** One value: when, of what, mg. */
  public record Given(OffsetDateTime at, String of, double mg) {}

  /**
   * One value with its averages.
   *
   * @param ewma exponentially weighted average; NaN without limits
   * @param cusumHigh upper sum; NaN without limits
   * @param cusumLow lower sum; NaN without limits
   */
  public record Point(
      OffsetDateTime at, String of, double mg, double ewma, double cusumHigh, double cusumLow) {}

  /** The limits, mg. */
  public record Limits(
      double centre,
      double sigma,
      double lower,
      double upper,
      double upperRange,
      double ewmaHalfWidth,
      double cusumDecision) {}

  /** A value that is out, and by which rule's stable word. */
  public record Signal(OffsetDateTime at, String of, String rule) {}

  /** Makes the chart; values in the order of time. */
  public static ControlSheet of(String title, List<Given> values) {
    double[] x = values.stream().mapToDouble(Given::mg).toArray();
    if (x.length < ENOUGH) {
      return bare(title, values);
    }
    IndividualsChart chart = IndividualsChart.of(x);
    return chart.sigma() > 0 ? new Making(values, x, chart).sheet(title) : bare(title, values);
  }

  private static ControlSheet bare(String title, List<Given> values) {
    List<Point> points =
        values.stream()
            .map(v -> new Point(v.at(), v.of(), v.mg(), Double.NaN, Double.NaN, Double.NaN))
            .toList();
    return new ControlSheet(title, points, null, List.of());
  }

  private static final class Making {
    private final List<Given> values;
    private final double[] x;
    private final IndividualsChart chart;

    Making(List<Given> values, double[] x, IndividualsChart chart) {
      this.values = values;
      this.x = x;
      this.chart = chart;
    }

    ControlSheet sheet(String title) {
      Ewma ewma = new Ewma(chart.centre(), chart.sigma(), LAMBDA, WIDTH);
      Cusum cusum = new Cusum(chart.centre(), ALLOWANCE * chart.sigma(), DECISION * chart.sigma());
      List<Ewma.Point> averages = ewma.points(x);
      List<Cusum.Point> sums = cusum.points(x);
      List<RunRules.Signal> broken =
          RunRules.signals(x, chart.centre(), chart.sigma(), EnumSet.allOf(RunRule.class));
      Set<Integer> jumps = Set.copyOf(chart.jumps(x));
      List<Point> points = new ArrayList<>();
      List<Signal> signals = new ArrayList<>();
      for (int i = 0; i < x.length; i++) {
        Given v = values.get(i);
        Cusum.Point sum = sums.get(i);
        points.add(
            new Point(v.at(), v.of(), v.mg(), averages.get(i).average(), sum.high(), sum.low()));
        int place = i;
        broken.stream()
            .filter(signal -> signal.place() == place)
            .forEach(signal -> add(signals, true, v, word(signal.rule())));
        add(signals, jumps.contains(i), v, "moving-range");
        add(signals, averages.get(i).out(), v, "ewma");
        add(signals, sum.out(), v, "cusum");
      }
      Limits limits =
          new Limits(
              chart.centre(),
              chart.sigma(),
              chart.lower(),
              chart.upper(),
              chart.upperMovingRange(),
              ewma.finalHalfWidth(),
              cusum.decision());
      return new ControlSheet(title, points, limits, signals);
    }

    private static void add(List<Signal> signals, boolean out, Given value, String rule) {
      if (out) {
        signals.add(new Signal(value.at(), value.of(), rule));
      }
    }
  }

  /** The stable word of a run rule. */
  public static String word(RunRule rule) {
    return rule.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
