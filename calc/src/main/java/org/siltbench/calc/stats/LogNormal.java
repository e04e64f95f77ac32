package org.siltbench.calc.stats;

/**
 * A lognormal description of positive data, such as concentrations over a storm.
 *
 * @param n number of values
 * @param geometricMean exp(mean of ln x), in the unit of the values
 * @param logDeviation standard deviation of ln x, no unit; NaN for one value
 */
public record LogNormal(long n, double geometricMean, double logDeviation) {

  /**
   * Fits by the mean and deviation of the natural logarithms.
   *
   * @param values finite, above zero, of one unit, at least one
   * @throws IllegalArgumentException if there is none or one is not above zero
   */
  public static LogNormal of(double... values) {
    double[] logs = Checked.finite(values, 1, "values");
    for (int i = 0; i < logs.length; i++) {
      logs[i] = Math.log(Checked.positive(logs[i], "value"));
    }
    Summary s = Summary.of(logs);
    return new LogNormal(s.n(), Math.exp(s.mean()), s.deviation());
  }

  /** Geometric standard deviation, exp(s of ln x), a factor; NaN for one value. */
  public double geometricDeviation() {
    return Math.exp(logDeviation);
  }

  /**
   * The arithmetic mean of that lognormal distribution, GM·exp(s²/2), with s taken as known: biased
   * upwards for few values. In the unit of the values; NaN for one value.
   */
  public double mean() {
    return geometricMean * Math.exp(logDeviation * logDeviation / 2);
  }

  /**
   * The value that the share p stays below: GM·exp(z(p)·s).
   *
   * @throws IllegalArgumentException if p is not in (0, 1)
   */
  public double quantile(double p) {
    return geometricMean * Math.exp(Quantiles.normal(p) * logDeviation);
  }
}
