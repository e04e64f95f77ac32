package org.siltbench.calc.stats;

/**
 * Number, mean and standard deviation of a sample.
 *
 * @param n number of values, at least 1
 * @param mean arithmetic mean, in the unit of the values
 * @param deviation experimental standard deviation with n − 1, same unit; NaN for one value, where
 *     it does not exist
 */
public record Summary(long n, double mean, double deviation) {

  /**
   * Mean and standard deviation by the corrected two-pass algorithm: mean = Σx/n, s² = [Σ(x − m)² −
   * (Σ(x − m))²/n]/(n − 1).
   *
   * <p>One value: mean is the value, deviation is NaN. All equal: deviation exactly 0. Source: GUM
   * (JCGM 100:2008) 4.2.1, 4.2.2; algorithm: Chan, Golub, LeVeque, The American Statistician 37
   * (1983) 242-247.
   *
   * @param values any finite numbers of one unit, at least one
   * @throws IllegalArgumentException if there is none, or one is NaN or infinite
   */
  public static Summary of(double... values) {
    double[] x = Checked.finite(values, 1, "values");
    double rough = CompensatedSum.of(x) / x.length;
    CompensatedSum first = new CompensatedSum();
    CompensatedSum second = new CompensatedSum();
    for (double value : x) {
      double d = value - rough;
      first.add(d);
      second.add(d * d);
    }
    double shift = first.value() / x.length;
    return new Summary(x.length, rough + shift, root(second.value(), shift, x.length));
  }

  private static double root(double squares, double shift, int n) {
    return n < 2 ? Double.NaN : Math.sqrt(Math.max(0, squares - n * shift * shift) / (n - 1));
  }

  /**
   * The standard deviation of the mean, s/√n (GUM 4.2.3); NaN for one value.
   *
   * @return in the unit of the values
   */
  public double deviationOfMean() {
    return deviation / Math.sqrt((double) n);
  }

  /** Degrees of freedom of the deviation, n − 1. */
  public long degreesOfFreedom() {
    return n - 1;
  }

  /** The deviation over the mean without sign; infinite for a mean of zero, NaN for one value. */
  public double relativeDeviation() {
    return deviation / Math.abs(mean);
  }
}
