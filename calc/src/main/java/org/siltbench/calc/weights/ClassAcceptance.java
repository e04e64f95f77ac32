package org.siltbench.calc.weights;

import org.siltbench.calc.quantity.Mass;

/**
 * Whether a certificate lets a weight count as one of its class: both rules of OIML R 111-1:2004.
 *
 * @param limit the class's maximum permissible error
 * @param error conventional mass − nominal, signed
 * @param smallUncertainty 5.2: U(k = 2) ≤ limit/3
 * @param withinReducedLimit 5.3: |error| ≤ limit − U
 */
public record ClassAcceptance(
    Mass limit, Mass error, boolean smallUncertainty, boolean withinReducedLimit) {

  /**
   * Judges a certificate. Exact arithmetic; both limits are inclusive.
   *
   * @param weightClass the class claimed
   * @param nominal a nominal mass of the table
   * @param conventional the certified conventional mass
   * @param expandedUncertainty U with k = 2, zero or more
   * @throws IllegalArgumentException if the table has no such nominal or U is negative
   */
  public static ClassAcceptance judge(
      WeightClass weightClass, Mass nominal, Mass conventional, Mass expandedUncertainty) {
    if (expandedUncertainty.isNegative()) {
      throw new IllegalArgumentException("U must not be below zero: " + expandedUncertainty);
    }
    Mass limit = ClassLimits.of(weightClass, nominal);
    Mass error = conventional.minus(nominal);
    boolean small = Math.multiplyExact(expandedUncertainty.nanograms(), 3) <= limit.nanograms();
    boolean within = error.abs().compareTo(limit.minus(expandedUncertainty)) <= 0;
    return new ClassAcceptance(limit, error, small, within);
  }

  /** True if both rules hold. */
  public boolean accepted() {
    return smallUncertainty && withinReducedLimit;
  }
}
