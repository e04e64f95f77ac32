package org.siltbench.calc.stats;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * The non-central t distribution: (Z + δ)/√(W/ν), Z standard normal, W chi-square with ν degrees of
 * freedom.
 *
 * <p>P(T ≤ t) = ∫ Φ(t·s − δ) f(s) ds over s = √(W/ν) &gt; 0, by Simpson's rule on the range that
 * holds all but 10⁻¹⁶ of s. Absolute error below 10⁻⁹ for whole ν, 10⁻⁷ between.
 */
public final class NonCentralT {

  private static final int STEPS = 2000;
  private static final double TAIL = 1e-16;
  private static final double TOLERANCE = 1e-12;

  private NonCentralT() {}

  /**
   * P(T ≤ t).
   *
   * @param t finite
   * @param degreesOfFreedom 1 or more, finite
   * @param nonCentrality δ, finite
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static double probability(double t, double degreesOfFreedom, double nonCentrality) {
    Checked.finite(t, "t");
    Checked.finite(nonCentrality, "non-centrality");
    double nu = Checked.within(degreesOfFreedom, 1, 1e7, "degrees of freedom");
    double from = nu < 30 ? 0 : Math.sqrt(Quantiles.chiSquare(TAIL, nu) / nu);
    double to = Math.sqrt(-2 * Math.log(TAIL) / nu) + 1 + 3 / Math.sqrt(nu);
    double h = (to - from) / STEPS;
    ChiSquaredDistribution chiSquare = ChiSquaredDistribution.of(nu);
    CompensatedSum sum = new CompensatedSum();
    for (int i = 0; i <= STEPS; i++) {
      double s = from + i * h;
      int weight = i == 0 || i == STEPS ? 1 : 2 + 2 * (i % 2);
      sum.add(weight * density(s, chiSquare) * Quantiles.normalProbability(t * s - nonCentrality));
    }
    return Math.min(1, Math.max(0, sum.value() * h / 3));
  }

  /**
   * The non-centrality δ for which a value with that true offset is missed with probability β by a
   * test that has false-positive probability α: P(T(ν, δ) ≤ t(1 − α; ν)) = β.
   *
   * <p>Source: ISO 11843-1:1997 and ISO 11843-2:2000, 5.3 (non-centrality parameter); for ν → ∞ it
   * is z(1 − α) + z(1 − β). Found by bisection to 10⁻¹².
   *
   * @param degreesOfFreedom 1 or more; infinite allowed
   * @param alpha in (0, 0.5]
   * @param beta in (0, 0.5]
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static double nonCentrality(double degreesOfFreedom, double alpha, double beta) {
    Checked.within(alpha, Double.MIN_NORMAL, 0.5, "alpha");
    Checked.within(beta, Double.MIN_NORMAL, 0.5, "beta");
    double normal = Quantiles.normal(1 - alpha) + Quantiles.normal(1 - beta);
    if (Double.isInfinite(degreesOfFreedom)) {
      return normal;
    }
    double t = Quantiles.student(1 - alpha, degreesOfFreedom);
    double low = 0;
    double high = bound(degreesOfFreedom, t, beta);
    while (high - low > TOLERANCE * high) {
      double mid = low + (high - low) / 2;
      if (probability(t, degreesOfFreedom, mid) > beta) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return low + (high - low) / 2;
  }

  /** A δ that is missed with probability β at most: s above its 1 − β/2 quantile, or Z below. */
  private static double bound(double nu, double t, double beta) {
    double s = Math.sqrt(Quantiles.chiSquare(1 - beta / 2, nu) / nu);
    return t * s + Quantiles.normal(1 - beta / 2);
  }

  /** Density of s = √(W/ν): 2νs · χ²density(νs²). */
  private static double density(double s, ChiSquaredDistribution chiSquare) {
    double nu = chiSquare.getDegreesOfFreedom();
    if (s == 0) {
      return nu == 1 ? Math.sqrt(2 / Math.PI) : 0;
    }
    return 2 * nu * s * chiSquare.density(nu * s * s);
  }
}
