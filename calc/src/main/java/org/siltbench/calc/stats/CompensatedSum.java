package org.siltbench.calc.stats;

/**
 * A running sum that carries its rounding error along (Neumaier's variant of Kahan's method).
 *
 * <p>Source: A. Neumaier, Z. angew. Math. Mech. 54 (1974) 39-51. Error about one unit in the last
 * place of the sum, whatever the order. Not thread-safe.
 */
public final class CompensatedSum {

  private double sum;
  private double lost;

  /** Adds one value; NaN or infinite values make the sum NaN or infinite. */
  public void add(double value) {
    double next = sum + value;
    if (Double.isFinite(next)) {
      lost += Math.abs(sum) >= Math.abs(value) ? (sum - next) + value : (value - next) + sum;
    }
    sum = next;
  }

  /** The sum so far; 0 when nothing was added. */
  public double value() {
    return sum + lost;
  }

  /** The sum of all values; 0 for none. */
  public static double of(double... values) {
    CompensatedSum total = new CompensatedSum();
    for (double value : values) {
      total.add(value);
    }
    return total.value();
  }
}
