package org.siltbench.calc.advice;

import org.siltbench.calc.stats.Checked;

/**
 * The net sample from which a balance weighs to 0.10 % with k = 2. Residues often lie below it:
 * that is told, and blocks nothing, for a residue's own uncertainty says what it is worth.
 */
public final class LeastNetSample {

  private static final double FACTOR = 2000;
  private static final double LEAST_STEPS = 0.41;

  private LeastNetSample() {}

  /**
   * 2000·max(s, 0.41·d): 2·s/m = 0.001, where a deviation under 0.41 steps is the display's doing.
   * Source: common practice in weighing (pharmacopoeial), from memory. d = 0.01 mg gives 8.2 mg, d
   * = 0.1 mg 82 mg.
   *
   * @param deviation s of repeated weighings, mg, zero or above
   * @param step d, the displayed step, mg, zero or above; both zero give 0
   * @return mg
   * @throws IllegalArgumentException if one is negative, NaN or infinite
   */
  public static double milligrams(double deviation, double step) {
    Checked.notNegative(deviation, "deviation in mg");
    return FACTOR * Math.max(deviation, LEAST_STEPS * Checked.notNegative(step, "step in mg"));
  }
}
