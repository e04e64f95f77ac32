package org.siltbench.calc.control;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.stats.Checked;

/**
 * Exponentially weighted moving average: sees a slow drift of a balance sooner than the individuals
 * chart.
 *
 * @param target the centre, in the unit of the values
 * @param sigma deviation of a single value, above zero
 * @param lambda weight of the newest value, (0, 1]; 0.2 to 0.3 is usual
 * @param width half-width of the limits in deviations of the average, above zero; 3 is usual
 */
public record Ewma(double target, double sigma, double lambda, double width) {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is out of range
   */
  public Ewma {
    Checked.finite(target, "target");
    Checked.positive(sigma, "deviation");
    Checked.positive(lambda, "lambda");
    Checked.within(lambda, 0, 1, "lambda");
    Checked.positive(width, "width");
  }

  /**
   * One point of the chart.
   *
   * @param average zᵢ
   * @param lower limit at this point
   * @param upper limit at this point
   */
  public record Point(double average, double lower, double upper) {

    /** True if the average lies outside the limits. */
    public boolean out() {
      return average < lower || average > upper;
    }
  }

  /**
   * zᵢ = λxᵢ + (1 − λ)zᵢ₋₁, z₀ = target; limits target ± width·σ·√(λ/(2 − λ)·(1 − (1 − λ)^(2i))).
   * Source: NIST/SEMATECH e-Handbook 6.3.2.4, with the exact variance for early points; Roberts,
   * Technometrics 1 (1959) 239-250.
   *
   * @param values in the order of time, finite; none gives no point
   * @throws IllegalArgumentException if one is not finite
   */
  public List<Point> points(double... values) {
    List<Point> out = new ArrayList<>();
    double z = target;
    double remains = 1;
    for (double x : Checked.finite(values, 0, "values")) {
      z = lambda * x + (1 - lambda) * z;
      remains *= (1 - lambda) * (1 - lambda);
      double half = width * sigma * Math.sqrt(lambda / (2 - lambda) * (1 - remains));
      out.add(new Point(z, target - half, target + half));
    }
    return List.copyOf(out);
  }

  /** Half-width of the limits after many points: width·σ·√(λ/(2 − λ)). */
  public double finalHalfWidth() {
    return width * sigma * Math.sqrt(lambda / (2 - lambda));
  }
}
