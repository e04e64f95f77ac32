package org.siltbench.calc.stats;

/**
 * Coverage factors for one probability and many degrees of freedom, quickly: Student's quantile as
 * a function of 1/ν on [0, 1] is smooth and is kept as a Chebyshev series. Immutable.
 *
 * <p>Relative error below 10⁻¹⁰ for ν ≥ 1 and probabilities from 0.5 to 0.999; below ν = 1 the
 * exact quantile is found each time. Source of the quantile: GUM (JCGM 100:2008) G.3; of the
 * series: the discrete Chebyshev transform on Gauss nodes.
 */
public final class CoverageFactors {

  private static final int TERMS = 28;

  private final double probability;
  private final double normal;
  private final double[] series;

  private CoverageFactors(double probability, double normal, double[] series) {
    this.probability = probability;
    this.normal = normal;
    this.series = series;
  }

  /**
   * The factors of a probability; finds {@value #TERMS} exact quantiles once.
   *
   * @param probability level of confidence in (0, 1), as 0.95
   * @throws IllegalArgumentException if it is not in (0, 1)
   */
  public static CoverageFactors of(double probability) {
    double[] logs = new double[TERMS];
    for (int i = 0; i < TERMS; i++) {
      double x = (1 + Math.cos(angle(i))) / 2;
      logs[i] = Math.log(Quantiles.coverageFactor(probability, 1 / x));
    }
    double normal = Quantiles.coverageFactor(probability, Double.POSITIVE_INFINITY);
    return new CoverageFactors(probability, normal, transform(logs));
  }

  private static double angle(int i) {
    return Math.PI * (i + 0.5) / TERMS;
  }

  private static double[] transform(double[] values) {
    double[] series = new double[TERMS];
    for (int k = 0; k < TERMS; k++) {
      CompensatedSum sum = new CompensatedSum();
      for (int i = 0; i < TERMS; i++) {
        sum.add(values[i] * Math.cos(k * angle(i)));
      }
      series[k] = sum.value() * (k == 0 ? 1 : 2) / TERMS;
    }
    return series;
  }

  /**
   * The factor k with P(|T| ≤ k) = p.
   *
   * @param degreesOfFreedom above zero; infinite gives the normal factor
   * @throws IllegalArgumentException if NaN or not above zero
   */
  public double at(double degreesOfFreedom) {
    if (degreesOfFreedom == Double.POSITIVE_INFINITY) {
      return normal;
    }
    if (!(degreesOfFreedom >= 1)) {
      return Quantiles.coverageFactor(probability, degreesOfFreedom);
    }
    double x = 2 / degreesOfFreedom - 1;
    double b1 = 0;
    double b2 = 0;
    for (int k = TERMS - 1; k > 0; k--) {
      double b = 2 * x * b1 - b2 + series[k];
      b2 = b1;
      b1 = b;
    }
    return Math.exp(x * b1 - b2 + series[0]);
  }
}
