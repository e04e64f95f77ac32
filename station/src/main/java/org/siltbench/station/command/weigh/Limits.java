package org.siltbench.station.command.weigh;

import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;

/** Reads limits given in milligrams. */
final class Limits {

  private Limits() {}

  static Mass milligrams(String text) {
    try {
      Mass mass = Mass.ofMilligrams(text);
      if (mass.nanograms() > 0) {
        return mass;
      }
    } catch (NumberFormatException e) {
      throw new Problem.WrongUse(e.getMessage() + ".", "Write the limit in mg, as 0.3.");
    }
    throw new Problem.WrongUse("A limit must be above 0 mg.", "Check --limit.");
  }
}
