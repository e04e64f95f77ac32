package org.siltbench.calc.detection;

import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.NonCentralT;
import org.siltbench.calc.stats.Quantiles;

/**
 * Critical level, detection limit and determination limit of a net signal.
 *
 * @param critical L_C: a result above it is said to be detected
 * @param detection L_D: the true value that is missed with probability β only
 * @param determination L_Q: the true value whose relative standard deviation is 10 %
 */
public record CurrieLimits(double critical, double detection, double determination) {

  /** Deviations that make 10 % relative standard deviation. */
  public static final double DETERMINATION_FACTOR = 10;

  /**
   * For a known deviation of the net signal at zero: L_C = z(1 − α)·σ0, L_D = L_C + z(1 − β)·σ0,
   * L_Q = 10·σ0; with α = β = 0.05: 1.645, 3.290 and 10 σ0. Source: L. A. Currie, Anal. Chem. 40
   * (1968) 586-593, table II.
   *
   * @param sigma0 standard deviation of the net signal when nothing is there, above zero or zero;
   *     zero gives three zeros
   * @param alpha probability of a false detection, (0, 0.5]
   * @param beta probability of a miss, (0, 0.5]
   * @throws IllegalArgumentException if a number is out of range
   */
  public static CurrieLimits known(double sigma0, double alpha, double beta) {
    Checked.notNegative(sigma0, "deviation at zero");
    double za = z(alpha, "alpha");
    double zb = z(beta, "beta");
    return new CurrieLimits(za * sigma0, (za + zb) * sigma0, DETERMINATION_FACTOR * sigma0);
  }

  /**
   * The deviation of a net signal at zero: σ0 = σB·√(1 + 1/n) for a blank known from n blanks;
   * paired observations are n = 1, the well-known blank is n → ∞ (Currie 1968).
   *
   * @param blankDeviation σB, zero or more
   * @param blanks how many blanks the subtracted mean is made of, at least 1
   * @throws IllegalArgumentException if a number is out of range
   */
  public static double deviationAtZero(double blankDeviation, int blanks) {
    Checked.notNegative(blankDeviation, "deviation of the blank");
    return blankDeviation * Math.sqrt(1 + 1.0 / Checked.atLeast(blanks, 1, "number of blanks"));
  }

  /**
   * For a deviation estimated with ν degrees of freedom: L_C = t(1 − α; ν)·s0, L_D = δ(α, β; ν)·s0
   * with the non-centrality δ (not 2t), L_Q = 10·s0. Sources: L. A. Currie, Pure Appl. Chem. 67
   * (1995) 1699-1723; ISO 11843-1:1997.
   *
   * @param s0 estimated deviation of the net signal at zero, zero or more
   * @param degreesOfFreedom of s0, 1 or more
   * @param alpha (0, 0.5]
   * @param beta (0, 0.5]
   * @throws IllegalArgumentException if a number is out of range
   */
  public static CurrieLimits estimated(
      double s0, double degreesOfFreedom, double alpha, double beta) {
    Checked.notNegative(s0, "deviation at zero");
    z(alpha, "alpha");
    z(beta, "beta");
    double t = Quantiles.student(1 - alpha, degreesOfFreedom);
    double delta = NonCentralT.nonCentrality(degreesOfFreedom, alpha, beta);
    return new CurrieLimits(t * s0, delta * s0, DETERMINATION_FACTOR * s0);
  }

  private static double z(double probability, String name) {
    if (!(probability > 0 && probability <= 0.5)) {
      throw new IllegalArgumentException(name + " must lie in (0, 0.5]: " + probability);
    }
    return Quantiles.normal(1 - probability);
  }
}
