package org.siltbench.calc.stats;

/** Argument checks that name the value and its limit. */
public final class Checked {

  private Checked() {}

  /**
   * Returns the value if it is a finite number.
   *
   * @throws IllegalArgumentException if it is NaN or infinite
   */
  public static double finite(double value, String name) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " is not a finite number: " + value);
    }
    return value;
  }

  /**
   * Returns the value if it is finite and above zero.
   *
   * @throws IllegalArgumentException if it is NaN, infinite, zero or below
   */
  public static double positive(double value, String name) {
    if (!(finite(value, name) > 0)) {
      throw new IllegalArgumentException(name + " must be above zero: " + value);
    }
    return value;
  }

  /**
   * Returns the value if it is finite and not below zero.
   *
   * @throws IllegalArgumentException if it is NaN, infinite or below zero
   */
  public static double notNegative(double value, String name) {
    if (finite(value, name) < 0) {
      throw new IllegalArgumentException(name + " must not be below zero: " + value);
    }
    return value;
  }

  /**
   * Returns the value if it lies in the closed range.
   *
   * @throws IllegalArgumentException if it is NaN or outside [low, high]
   */
  public static double within(double value, double low, double high, String name) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " must lie from " + low + " to " + high + ": " + value);
    }
    return value;
  }

  /**
   * Returns the probability if it lies in the open range (0, 1).
   *
   * @throws IllegalArgumentException otherwise
   */
  public static double probability(double value, String name) {
    if (!(value > 0 && value < 1)) {
      throw new IllegalArgumentException(name + " must lie between 0 and 1: " + value);
    }
    return value;
  }

  /**
   * Returns the count if it reaches the least one.
   *
   * @throws IllegalArgumentException if it is smaller
   */
  public static int atLeast(int count, int least, String name) {
    if (count < least) {
      throw new IllegalArgumentException(name + " must be at least " + least + ": " + count);
    }
    return count;
  }

  /**
   * Returns a copy of the values if each is finite and there are enough.
   *
   * @throws IllegalArgumentException if one is NaN or infinite or there are fewer than {@code
   *     least}
   */
  public static double[] finite(double[] values, int least, String name) {
    atLeast(values.length, least, "number of " + name);
    double[] copy = values.clone();
    for (double value : copy) {
      finite(value, name);
    }
    return copy;
  }
}
