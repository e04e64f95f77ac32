package org.siltbench.calc.uncertainty;

import org.siltbench.calc.stats.Checked;

/** Standard uncertainties from what is usually stated (JCGM 100:2008, 4.3). Units are kept. */
public final class StandardUncertainty {

  private StandardUncertainty() {}

  /**
   * Of a rectangular distribution: a/√3 (4.3.7).
   *
   * @param halfWidth a, zero or above
   * @throws IllegalArgumentException if negative, NaN or infinite
   */
  public static double rectangular(double halfWidth) {
    return Checked.notNegative(halfWidth, "half width") / Math.sqrt(3);
  }

  /**
   * Of a triangular distribution: a/√6 (4.3.9).
   *
   * @param halfWidth a, zero or above
   * @throws IllegalArgumentException if negative, NaN or infinite
   */
  public static double triangular(double halfWidth) {
    return Checked.notNegative(halfWidth, "half width") / Math.sqrt(6);
  }

  /**
   * Of one displayed value with step d: d/√12 (F.2.2.1). The difference of two has √2 times this,
   * d/√6.
   *
   * @param step d, zero or above
   * @throws IllegalArgumentException if negative, NaN or infinite
   */
  public static double resolution(double step) {
    return Checked.notNegative(step, "step") / Math.sqrt(12);
  }

  /**
   * Of a certificate: U/k.
   *
   * @param expanded U, zero or above
   * @param k the certificate's coverage factor, above zero
   * @throws IllegalArgumentException if out of range
   */
  public static double certificate(double expanded, double k) {
    return Checked.notNegative(expanded, "U") / Checked.positive(k, "k");
  }

  /**
   * Degrees of freedom of an estimate that is itself uncertain by a relative amount: ½·(Δu/u)⁻²
   * (G.4.2, formula G.3). 0.25 gives 8.
   *
   * @param relative Δu/u, above zero; 0 gives infinity
   * @throws IllegalArgumentException if negative, NaN or infinite
   */
  public static double dofOfEstimate(double relative) {
    Checked.notNegative(relative, "relative uncertainty of u");
    return 0.5 / (relative * relative);
  }
}
