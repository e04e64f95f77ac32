package org.siltbench.calc.stats;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Quantiles of the distributions that limits and coverage factors are made of. */
public final class Quantiles {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private Quantiles() {}

  /**
   * z with P(Z ≤ z) = p for the standard normal distribution.
   *
   * @param p in (0, 1)
   * @throws IllegalArgumentException if p is not in (0, 1)
   */
  public static double normal(double p) {
    return NORMAL.inverseCumulativeProbability(Checked.probability(p, "p"));
  }

  /** P(Z ≤ z) for the standard normal distribution; NaN for NaN. */
  public static double normalProbability(double z) {
    return NORMAL.cumulativeProbability(z);
  }

  /**
   * t with P(T ≤ t) = p for Student's t distribution (one-sided).
   *
   * @param p in (0, 1)
   * @param degreesOfFreedom above zero, need not be whole; infinite gives the normal quantile
   * @throws IllegalArgumentException if p is not in (0, 1) or the degrees of freedom are NaN or not
   *     above zero
   */
  public static double student(double p, double degreesOfFreedom) {
    if (!(degreesOfFreedom > 0)) {
      throw new IllegalArgumentException(
          "degrees of freedom must be above zero: " + degreesOfFreedom);
    }
    if (Double.isInfinite(degreesOfFreedom)) {
      return normal(p);
    }
    return TDistribution.of(degreesOfFreedom)
        .inverseCumulativeProbability(Checked.probability(p, "p"));
  }

  /**
   * The coverage factor k with P(|T| ≤ k) = p (two-sided). Source: GUM (JCGM 100:2008) G.3, table
   * G.2.
   *
   * @param p level of confidence in (0, 1), as 0.95
   * @param degreesOfFreedom above zero; infinite gives the normal factor
   * @throws IllegalArgumentException as for {@link #student(double, double)}
   */
  public static double coverageFactor(double p, double degreesOfFreedom) {
    return student(0.5 + Checked.probability(p, "p") / 2, degreesOfFreedom);
  }

  /**
   * x with P(X ≤ x) = p for the chi-square distribution.
   *
   * @param p in (0, 1)
   * @param degreesOfFreedom finite and above zero
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static double chiSquare(double p, double degreesOfFreedom) {
    return ChiSquaredDistribution.of(Checked.positive(degreesOfFreedom, "degrees of freedom"))
        .inverseCumulativeProbability(Checked.probability(p, "p"));
  }
}
