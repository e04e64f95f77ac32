package org.siltbench.calc.weights;

import org.siltbench.calc.quantity.Mass;

/**
 * One check of the balance with a check weight, against the balance's limit under the method. The
 * weight's own class limit plays no part: the certificate gives value and uncertainty.
 *
 * @param error reading − certified value, signed
 * @param limit the balance's limit ±
 * @param pass |error| ≤ limit, inclusive
 * @param weightGoodEnough the weight's U(k = 2) is at most a third of the limit, so that the check
 *     can tell (the 1 : 3 of OIML R 111-1 5.2 applied to a balance: common practice)
 */
public record BalanceCheck(Mass error, Mass limit, boolean pass, boolean weightGoodEnough) {

  /**
   * Checks one reading. Exact arithmetic.
   *
   * @param reading what the balance showed
   * @param certified the weight's certified conventional mass (not its nominal)
   * @param expandedUncertainty of the certificate, k = 2, zero or more
   * @param limit above zero
   * @throws IllegalArgumentException if the limit is not above zero or U negative
   */
  public static BalanceCheck of(
      Mass reading, Mass certified, Mass expandedUncertainty, Mass limit) {
    if (limit.nanograms() <= 0) {
      throw new IllegalArgumentException("the balance's limit must be above zero: " + limit);
    }
    if (expandedUncertainty.isNegative()) {
      throw new IllegalArgumentException("U must not be below zero: " + expandedUncertainty);
    }
    Mass error = reading.minus(certified);
    boolean good = Math.multiplyExact(expandedUncertainty.nanograms(), 3) <= limit.nanograms();
    return new BalanceCheck(error, limit, error.abs().compareTo(limit) <= 0, good);
  }
}
