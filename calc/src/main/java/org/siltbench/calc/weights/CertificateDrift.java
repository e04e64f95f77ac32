package org.siltbench.calc.weights;

import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.stats.Checked;

/**
 * How a check weight changed between two certificates.
 *
 * @param change newer − older conventional mass
 * @param normalisedError |change| / √(U₁² + U₂²), no unit; above 1 the change is real
 * @param milligramsPerYear change over the time between, mg a year
 * @param uncertainty standard uncertainty to allow for drift until the next certificate,
 *     |change|/√3 (rectangular, ± the change seen), mg
 */
public record CertificateDrift(
    Mass change, double normalisedError, double milligramsPerYear, double uncertainty) {

  /**
   * Compares two certificates.
   *
   * <p>Sources: normalised error Eₙ: ISO 13528:2015 9.7; drift as a rectangular contribution:
   * EURAMET cg-18, 7.1.2.3 (from memory). Both uncertainties zero: Eₙ is 0 for no change, else
   * infinite.
   *
   * @param older older certified value
   * @param olderExpanded its U, k = 2
   * @param newer newer certified value
   * @param newerExpanded its U, k = 2
   * @param years between the two, above zero
   * @throws IllegalArgumentException if a U is negative or the time not above zero
   */
  public static CertificateDrift between(
      Mass older, Mass olderExpanded, Mass newer, Mass newerExpanded, double years) {
    Checked.positive(years, "years between certificates");
    double u1 = Checked.notNegative(olderExpanded.milligrams(), "U of the older certificate");
    double u2 = Checked.notNegative(newerExpanded.milligrams(), "U of the newer certificate");
    Mass change = newer.minus(older);
    double size = Math.abs(change.milligrams());
    double en = size == 0 ? 0 : size / Math.hypot(u1, u2);
    return new CertificateDrift(change, en, change.milligrams() / years, size / Math.sqrt(3));
  }

  /** True if the two certificates disagree: the weight changed, or one of them is wrong. */
  public boolean significant() {
    return normalisedError > 1;
  }
}
