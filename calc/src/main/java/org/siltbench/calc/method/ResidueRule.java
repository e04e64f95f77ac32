package org.siltbench.calc.method;

import org.siltbench.calc.quantity.Mass;

/**
 * How much residue a filter should carry.
 *
 * @param min the least residue for a valid result
 * @param max the most
 * @param stopBelow zero or negative: a residue below this stops the work with a question
 */
public record ResidueRule(Mass min, Mass max, Mass stopBelow) {

  /**
   * @throws IllegalArgumentException unless stopBelow ≤ 0 ≤ min ≤ max
   */
  public ResidueRule {
    if (stopBelow.nanograms() > 0 || min.isNegative() || min.compareTo(max) > 0) {
      throw new IllegalArgumentException(
          "residue limits must be stop <= 0 <= min <= max: " + stopBelow + ", " + min + ", " + max);
    }
  }
}
