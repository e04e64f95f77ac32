package org.siltbench.calc.method;

/**
 * A closed range of numbers, written {@code 103 to 105}.
 *
 * @param low the lower end
 * @param high the upper end, not below the lower
 */
public record Span(double low, double high) {

  /**
   * @throws IllegalArgumentException if an end is not finite or the ends are exchanged
   */
  public Span {
    if (!(low <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException("not a range: " + low + " to " + high);
    }
  }

  /** True within the range, its ends included; NaN is not. */
  public boolean contains(double value) {
    return value >= low && value <= high;
  }
}
