package org.siltbench.calc.control;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.CompensatedSum;

/**
 * Limits of a chart of individuals and moving ranges: for check weights and blanks, one value a
 * day.
 *
 * @param n number of values the limits are made of
 * @param centre their mean, in the unit of the values
 * @param meanMovingRange mean of |xᵢ − xᵢ₋₁|
 */
public record IndividualsChart(int n, double centre, double meanMovingRange) {

  /** d2 for ranges of two as the tables print it, so that published charts come out (2/√π). */
  public static final double D2 = 1.128;

  /** D4 for ranges of two as the tables print it (1 + 3·d3/d2, d3 = √(2 − 4/π)). */
  public static final double D4 = 3.267;

  /**
   * Limits x̄ ± 3·MR̄/d2, and D4·MR̄ for the moving range. Sources: NIST/SEMATECH e-Handbook
   * 6.3.2.2; ISO 7870-2:2013 (individuals chart).
   *
   * <p>All equal: the limits coincide with the centre.
   *
   * @param values in the order of time, finite, at least 2
   * @throws IllegalArgumentException if there are fewer than 2 or one is not finite
   */
  public static IndividualsChart of(double... values) {
    double[] x = Checked.finite(values, 2, "values");
    CompensatedSum ranges = new CompensatedSum();
    for (int i = 1; i < x.length; i++) {
      ranges.add(Math.abs(x[i] - x[i - 1]));
    }
    return new IndividualsChart(
        x.length, CompensatedSum.of(x) / x.length, ranges.value() / (x.length - 1));
  }

  /** The deviation the limits are made of, MR̄/d2, in the unit of the values. */
  public double sigma() {
    return meanMovingRange / D2;
  }

  /** Upper control limit of the values. */
  public double upper() {
    return centre + 3 * sigma();
  }

  /** Lower control limit of the values. */
  public double lower() {
    return centre - 3 * sigma();
  }

  /** Upper control limit of the moving range; its lower limit is 0. */
  public double upperMovingRange() {
    return D4 * meanMovingRange;
  }

  /**
   * The places (from 0) where the step from the value before is beyond the limit of the moving
   * range.
   *
   * @param values in the order of time, finite; fewer than two have no step
   * @throws IllegalArgumentException if one is not finite
   */
  public List<Integer> jumps(double... values) {
    double[] x = Checked.finite(values, 0, "values");
    List<Integer> out = new ArrayList<>();
    for (int i = 1; i < x.length; i++) {
      if (Math.abs(x[i] - x[i - 1]) > upperMovingRange()) {
        out.add(i);
      }
    }
    return List.copyOf(out);
  }
}
