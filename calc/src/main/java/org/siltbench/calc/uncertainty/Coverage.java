package org.siltbench.calc.uncertainty;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.Quantiles;

/**
 * How a standard uncertainty becomes an expanded one: by a stated probability, then k is Student's
 * t for the effective degrees of freedom, which need not be whole (JCGM 100:2008, G.3 and G.4.1
 * note 1); or by a stated k. Safe for use by several threads.
 */
public final class Coverage {

  private record Known(double dof, double factor) {}

  private final @Nullable Double probability;
  private final double infinite;
  private volatile Known last;

  private Coverage(@Nullable Double probability, double infinite) {
    this.probability = probability;
    this.infinite = infinite;
    this.last = new Known(Double.POSITIVE_INFINITY, infinite);
  }

  /**
   * Coverage with a stated probability.
   *
   * @param probability in the open range 0 to 1, as 0.95
   * @throws IllegalArgumentException outside it
   */
  public static Coverage ofProbability(double probability) {
    return new Coverage(
        probability, Quantiles.coverageFactor(probability, Double.POSITIVE_INFINITY));
  }

  /**
   * Coverage with a stated factor, whatever the degrees of freedom.
   *
   * @param k finite, above zero
   * @throws IllegalArgumentException otherwise
   */
  public static Coverage ofFactor(double k) {
    return new Coverage(null, Checked.positive(k, "coverage factor"));
  }

  /** The stated probability; null where k is stated. */
  public @Nullable Double probability() {
    return probability;
  }

  /**
   * The coverage factor k.
   *
   * @param dof effective degrees of freedom, above zero; infinite gives the normal factor
   * @throws IllegalArgumentException if dof is NaN or not above zero
   */
  public double factor(double dof) {
    if (probability == null || dof == Double.POSITIVE_INFINITY) {
      return infinite;
    }
    Known known = last;
    if (known.dof != dof) {
      known = new Known(dof, Quantiles.coverageFactor(probability, dof));
      last = known;
    }
    return known.factor;
  }
}
