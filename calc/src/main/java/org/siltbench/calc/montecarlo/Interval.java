package org.siltbench.calc.montecarlo;

/**
 * A coverage interval.
 *
 * @param low lower end, in the unit of the output
 * @param high upper end
 * @param probability coverage probability, in (0, 1)
 */
public record Interval(double low, double high, double probability) {

  /** high − low. */
  public double length() {
    return high - low;
  }

  /** True if the value lies in the interval, ends included. */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }
}
