package org.siltbench.calc.stats;

import org.siltbench.calc.reason.Unfit;

/**
 * A straight line y = y1 + y2·(x − x0) by least squares, with its uncertainties.
 *
 * @param origin x0, in the unit of x
 * @param intercept y1, the line's value at x0
 * @param slope y2
 * @param interceptUncertainty u(y1)
 * @param slopeUncertainty u(y2)
 * @param correlation r(y1, y2), in [−1, 1]
 * @param residualDeviation s, the deviation about the line with n − 2 degrees of freedom
 * @param n number of points, at least 3
 * @param meanX mean of x
 * @param sumOfSquaresX Σ(x − meanX)²
 */
public record Line(
    double origin,
    double intercept,
    double slope,
    double interceptUncertainty,
    double slopeUncertainty,
    double correlation,
    double residualDeviation,
    int n,
    double meanX,
    double sumOfSquaresX) {

  /**
   * Ordinary least squares with x known and a common variance of y.
   *
   * <p>slope = Σ(x − x̄)(y − ȳ)/Σ(x − x̄)²; s² = Σ(residual)²/(n − 2); u²(slope) = s²/Σ(x − x̄)²;
   * u²(y1) = s²(1/n + (x̄ − x0)²/Σ(x − x̄)²). Source: GUM (JCGM 100:2008) H.3.2, H.3.3. Points on a
   * line give s = 0 up to rounding.
   *
   * @param x finite, at least 3, not all equal
   * @param y finite, as many as x
   * @param origin x0, finite
   * @throws IllegalArgumentException if lengths differ, there are fewer than 3 points, a number is
   *     not finite or all x are equal
   */
  public static Line fit(double[] x, double[] y, double origin) {
    double[] xs = Checked.finite(x, 3, "x");
    double[] ys = Checked.finite(y, 3, "y");
    if (xs.length != ys.length) {
      throw new Unfit(LineSays.NOT_AS_MANY, xs.length, ys.length);
    }
    double mx = Summary.of(xs).mean();
    double my = Summary.of(ys).mean();
    double sxx = products(xs, mx, xs, mx);
    if (!(sxx > 0)) {
      throw new Unfit(LineSays.ALL_EQUAL, xs[0]);
    }
    double slope = products(xs, mx, ys, my) / sxx;
    double s = residualDeviation(xs, ys, mx, my, slope);
    return of(Checked.finite(origin, "origin"), slope, my, s, xs.length, mx, sxx);
  }

  private static Line of(
      double x0, double slope, double my, double s, int n, double mx, double sxx) {
    double away = x0 - mx;
    double u1 = s * Math.sqrt(1.0 / n + away * away / sxx);
    double u2 = s / Math.sqrt(sxx);
    double r = away / Math.sqrt(sxx / n + away * away);
    return new Line(x0, my + slope * away, slope, u1, u2, r, s, n, mx, sxx);
  }

  private static double products(double[] a, double ma, double[] b, double mb) {
    CompensatedSum sum = new CompensatedSum();
    for (int i = 0; i < a.length; i++) {
      sum.add((a[i] - ma) * (b[i] - mb));
    }
    return sum.value();
  }

  private static double residualDeviation(
      double[] x, double[] y, double mx, double my, double slope) {
    CompensatedSum sum = new CompensatedSum();
    for (int i = 0; i < x.length; i++) {
      double e = (y[i] - my) - slope * (x[i] - mx);
      sum.add(e * e);
    }
    return Math.sqrt(sum.value() / (x.length - 2));
  }

  /** Degrees of freedom, n − 2. */
  public int degreesOfFreedom() {
    return n - 2;
  }

  /** The line's value at x. */
  public double at(double x) {
    return intercept + slope * (x - origin);
  }

  /**
   * Standard uncertainty of the line's value at x (not of a new point): s·√(1/n + (x − x̄)²/Sxx).
   * Source: GUM H.3.4.
   */
  public double uncertaintyAt(double x) {
    return residualDeviation * Math.sqrt(leverage(x));
  }

  /** Standard deviation of a single new observation at x: s·√(1 + 1/n + (x − x̄)²/Sxx). */
  public double predictionDeviationAt(double x) {
    return residualDeviation * Math.sqrt(1 + leverage(x));
  }

  /** 1/n + (x − x̄)²/Sxx: how much a point at x would pull the line; no unit. */
  public double leverage(double x) {
    return 1.0 / n + (x - meanX) * (x - meanX) / sumOfSquaresX;
  }
}
