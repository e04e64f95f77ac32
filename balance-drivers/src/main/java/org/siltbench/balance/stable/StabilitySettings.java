package org.siltbench.balance.stable;

import org.siltbench.calc.quantity.Mass;

/**
 * What the method asks of a stable mass.
 *
 * @param tolerance how far a recorded mass may lie off the truth; never finer than one division of
 *     the balance or twice the standard deviation of its readings
 * @param moistureAllowance most that a filter may have gained since it left the desiccator
 * @param resolution the balance's division where it is known; zero takes it from the digits shown
 */
public record StabilitySettings(Mass tolerance, Mass moistureAllowance, Mass resolution) {

  private static final Mass TENTH_MG = new Mass(100_000);

  /** Refuses a tolerance of nothing. */
  public StabilitySettings {
    if (tolerance.nanograms() <= 0) {
      throw new IllegalArgumentException("tolerance must be above zero: " + tolerance);
    }
    if (moistureAllowance.isNegative() || resolution.isNegative()) {
      throw new IllegalArgumentException("moisture allowance and resolution must not be negative");
    }
  }

  /** 0.1 mg for tolerance and moisture, the resolution from the digits shown. */
  public static StabilitySettings usual() {
    return new StabilitySettings(TENTH_MG, TENTH_MG, Mass.ZERO);
  }
}
