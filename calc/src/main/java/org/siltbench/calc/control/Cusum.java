package org.siltbench.calc.control;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.stats.Checked;

/**
 * Two-sided cumulative sum: adds up what exceeds an allowance on either side of the target.
 *
 * @param target the centre, in the unit of the values
 * @param allowance k, half the shift worth finding, same unit, zero or more; 0.5σ is usual
 * @param decision h, the sum that signals, same unit, above zero; 4σ to 5σ is usual
 */
public record Cusum(double target, double allowance, double decision) {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is out of range
   */
  public Cusum {
    Checked.finite(target, "target");
    Checked.notNegative(allowance, "allowance");
    Checked.positive(decision, "decision value");
  }

  /**
   * One point of the chart.
   *
   * @param high upper sum, zero or more
   * @param low lower sum, zero or more
   * @param out true if either exceeds the decision value
   */
  public record Point(double high, double low, boolean out) {}

  /**
   * Sh(i) = max(0, Sh(i−1) + x − target − k); Sl(i) = max(0, Sl(i−1) + target − k − x); a signal is
   * a sum above h. Source: NIST/SEMATECH e-Handbook 6.3.2.3; Page, Biometrika 41 (1954) 100-115.
   *
   * @param values in the order of time, finite; none gives no point
   * @throws IllegalArgumentException if one is not finite
   */
  public List<Point> points(double... values) {
    List<Point> out = new ArrayList<>();
    double high = 0;
    double low = 0;
    for (double x : Checked.finite(values, 0, "values")) {
      high = Math.max(0, high + (x - target) - allowance);
      low = Math.max(0, low + (target - x) - allowance);
      out.add(new Point(high, low, high > decision || low > decision));
    }
    return List.copyOf(out);
  }
}
