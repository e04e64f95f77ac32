package org.siltbench.calc.uncertainty;

/**
 * The correlation between two inputs.
 *
 * @param first the name of one part
 * @param second the name of another
 * @param r the correlation coefficient, -1 to 1
 */
public record Correlation(String first, String second, double r) {

  /**
   * @throws IllegalArgumentException if r is outside -1 to 1 or NaN, or both names are the same
   */
  public Correlation {
    if (!(r >= -1 && r <= 1) || first.equals(second)) {
      throw new IllegalArgumentException(first + ", " + second + ": r = " + r);
    }
  }
}
