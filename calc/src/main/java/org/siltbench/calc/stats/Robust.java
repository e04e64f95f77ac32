package org.siltbench.calc.stats;

import java.util.Arrays;

/**
 * Median and scaled median absolute deviation: a centre and a spread that one stuck filter does not
 * move.
 *
 * @param n number of values
 * @param median the median, in the unit of the values
 * @param deviation 1.4826 · median |x − median|, an estimate of the standard deviation for normal
 *     data, same unit
 */
public record Robust(int n, double median, double deviation) {

  /** 1/Φ⁻¹(3/4): makes the median absolute deviation consistent for normal data. */
  public static final double NORMAL_CONSISTENCY = 1.482602218505602;

  /**
   * Median and scaled median absolute deviation.
   *
   * <p>An even number takes the mean of the middle two. One value, or more than half equal:
   * deviation 0. Source: ISO 13528:2015 C.1 (median and scaled MAD).
   *
   * @param values finite numbers of one unit, at least one, in any order
   * @throws IllegalArgumentException if there is none, or one is NaN or infinite
   */
  public static Robust of(double... values) {
    double[] x = Checked.finite(values, 1, "values");
    double median = median(x);
    double[] away = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      away[i] = Math.abs(x[i] - median);
    }
    return new Robust(x.length, median, NORMAL_CONSISTENCY * median(away));
  }

  /**
   * True if a value lies within median ± factor · deviation, ends included: the mass window of a
   * lot of filters, where the factor is 5 by this bench's practice.
   *
   * @param value in the unit of the values
   * @param factor above zero
   * @throws IllegalArgumentException if the factor is not above zero
   */
  boolean holds(double value, double factor) {
    return Math.abs(value - median) <= Checked.positive(factor, "factor") * deviation;
  }

  private static double median(double[] values) {
    double[] x = values.clone();
    Arrays.sort(x);
    int half = x.length / 2;
    return x.length % 2 == 1 ? x[half] : x[half - 1] + (x[half] - x[half - 1]) / 2;
  }
}
