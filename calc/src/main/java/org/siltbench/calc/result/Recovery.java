package org.siltbench.calc.result;

import org.siltbench.calc.stats.Checked;

/**
 * What came back of a reference sample.
 *
 * @param percent 100·found/expected, %
 * @param u its standard uncertainty, %
 */
public record Recovery(double percent, double u) {

  private static final double PER_CENT = 100;

  /**
   * R = 100·C/E; u² = (100·u(C)/E)² + (R·u(E)/E)². Source: GUM (JCGM 100:2008) 5.1.2.
   *
   * @param found C, mg/L, signed, finite
   * @param foundU u(C), mg/L, zero or more
   * @param expected E, mg/L, above zero
   * @param expectedU u(E), mg/L, zero or more
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Recovery of(double found, double foundU, double expected, double expectedU) {
    Checked.finite(found, "concentration found");
    Checked.notNegative(foundU, "u(concentration found)");
    Checked.positive(expected, "concentration expected");
    Checked.notNegative(expectedU, "u(concentration expected)");
    double percent = PER_CENT * found / expected;
    double own = PER_CENT * foundU / expected;
    return new Recovery(percent, Math.hypot(own, percent * expectedU / expected));
  }
}
