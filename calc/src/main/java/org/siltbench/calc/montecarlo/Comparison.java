package org.siltbench.calc.montecarlo;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.siltbench.calc.stats.Checked;

/**
 * The comparison of a first-order interval with one by distributions, JCGM 101:2008 clause 8.
 *
 * @param tolerance δ, half a unit in the last of the digits asked for of u, in the unit of the
 *     result
 * @param lowDifference |y − U − y_low|
 * @param highDifference |y + U − y_high|
 */
public record Comparison(double tolerance, double lowDifference, double highDifference) {

  /**
   * Compares y ± U with an interval of the same probability.
   *
   * @param value y, first order
   * @param expanded U, first order, zero or more
   * @param uncertainty u, first order, above zero
   * @param interval the symmetric interval by distributions
   * @param digits significant digits of u that matter, 1 or 2
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Comparison of(
      double value, double expanded, double uncertainty, Interval interval, int digits) {
    Checked.finite(value, "value");
    Checked.notNegative(expanded, "U");
    return new Comparison(
        tolerance(uncertainty, digits),
        Math.abs(value - expanded - interval.low()),
        Math.abs(value + expanded - interval.high()));
  }

  /**
   * δ = ½·10^l where u = c·10^l and c has so many digits (JCGM 101:2008 7.9.2): u = 0.35 with 2
   * digits is 35·10⁻², δ = 0.005.
   *
   * @param uncertainty above zero
   * @param digits 1 to 3
   * @throws IllegalArgumentException if a number is out of range
   */
  public static double tolerance(double uncertainty, int digits) {
    Checked.positive(uncertainty, "u");
    Checked.within(digits, 1, 3, "digits");
    BigDecimal rounded =
        new BigDecimal(uncertainty).round(new MathContext(digits, RoundingMode.HALF_EVEN));
    int exponent = rounded.precision() - rounded.scale() - digits;
    return 0.5 * Math.pow(10, exponent);
  }

  /** True if both ends agree within the tolerance: the first order is validated. */
  public boolean validated() {
    return lowDifference <= tolerance && highDifference <= tolerance;
  }
}
