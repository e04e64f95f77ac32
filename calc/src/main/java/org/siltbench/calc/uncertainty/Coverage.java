package org.siltbench.calc.uncertainty;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.CoverageFactors;

/**
 * How a standard uncertainty becomes an expanded one: by a stated probability, then k is Student's
 * t for the effective degrees of freedom, which need not be whole (JCGM 100:2008, G.3 and G.4.1
 * note 1); or by a stated k. Safe for use by several threads.
 */
public final class Coverage {

  private final @Nullable Double probability;
  private final double stated;
  private final @Nullable CoverageFactors factors;

  private Coverage(@Nullable Double probability, double stated, @Nullable CoverageFactors factors) {
    this.probability = probability;
    this.stated = stated;
    this.factors = factors;
  }

  /**
   * Coverage with a stated probability.
   *
   * @param probability in the open range 0 to 1, as 0.95
   * @throws IllegalArgumentException outside it
   */
  public static Coverage ofProbability(double probability) {
    return new Coverage(probability, Double.NaN, CoverageFactors.of(probability));
  }

  /**
   * Coverage with a stated factor, whatever the degrees of freedom.
   *
   * @param k finite, above zero
   * @throws IllegalArgumentException otherwise
   */
  public static Coverage ofFactor(double k) {
    return new Coverage(null, Checked.positive(k, "coverage factor"), null);
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
    return factors == null ? stated : factors.at(dof);
  }
}
