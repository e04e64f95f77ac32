package org.siltbench.calc.constant;

import java.util.List;
import org.siltbench.calc.quantity.Mass;

/** Which of the successive masses counts as the result. */
public enum CountingMass {
  /** The last one. */
  LAST,
  /** The lowest of all. */
  LOWEST,
  /** The mean of the last two, rounded to a nanogram (half to even); one alone counts itself. */
  MEAN_OF_PAIR;

  /**
   * The mass that counts.
   *
   * @param masses in the order weighed, at least one
   * @throws IllegalArgumentException if there is none
   */
  public Mass of(List<Mass> masses) {
    if (masses.isEmpty()) {
      throw new IllegalArgumentException("no mass to choose from");
    }
    Mass last = masses.get(masses.size() - 1);
    return switch (this) {
      case LAST -> last;
      case LOWEST -> masses.stream().min(Mass::compareTo).orElse(last);
      case MEAN_OF_PAIR -> masses.size() < 2 ? last : mean(masses.get(masses.size() - 2), last);
    };
  }

  private static Mass mean(Mass a, Mass b) {
    return new Mass((long) Math.rint(Math.addExact(a.nanograms(), b.nanograms()) / 2.0));
  }
}
