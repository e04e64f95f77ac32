package org.siltbench.calc.load;

import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.CompensatedSum;
import org.siltbench.calc.stats.Line;

/**
 * A sediment rating curve, log y = a + b·log Q, with y a concentration (mg/L) or a load.
 *
 * @param base of the logarithms
 * @param line fitted in logarithms, origin 0: intercept a, slope b, residual deviation s
 * @param smearing mean of base^residual, no unit
 * @param lowestDischarge least Q fitted
 * @param highestDischarge greatest Q fitted
 */
public record RatingCurve(
    LogBase base, Line line, double smearing, double lowestDischarge, double highestDischarge) {

  private static final int MOST_TERMS = 10_000;

  /**
   * Fits by least squares in logarithms.
   *
   * @param discharge Q, above zero, at least 3, not all equal
   * @param response y, above zero, as many
   * @param base of the logarithms
   * @throws IllegalArgumentException if a number is not above zero (a flow or concentration of zero
   *     has no logarithm: leave it out and say so) or there are too few
   */
  public static RatingCurve fit(double[] discharge, double[] response, LogBase base) {
    double[] x = logs(discharge, base, "discharge");
    double[] y = logs(response, base, "response");
    Line line = Line.fit(x, y, 0);
    CompensatedSum smear = new CompensatedSum();
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    for (int i = 0; i < x.length; i++) {
      smear.add(base.power(y[i] - line.at(x[i])));
      low = Math.min(low, discharge[i]);
      high = Math.max(high, discharge[i]);
    }
    return new RatingCurve(base, line, smear.value() / x.length, low, high);
  }

  private static double[] logs(double[] values, LogBase base, String name) {
    double[] out = Checked.finite(values, 3, name);
    for (int i = 0; i < out.length; i++) {
      out[i] = base.log(Checked.positive(out[i], name));
    }
    return out;
  }

  /** True if a discharge lies outside what was fitted: an extrapolation, to be said. */
  public boolean extrapolates(double discharge) {
    return !(discharge >= lowestDischarge && discharge <= highestDischarge);
  }

  /**
   * The response at a discharge: base^(a + b·log Q) times {@link #factor}.
   *
   * @param discharge above zero
   * @param correction which bias correction
   * @throws IllegalArgumentException if the discharge is not above zero
   */
  public double at(double discharge, BiasCorrection correction) {
    double x = base.log(Checked.positive(discharge, "discharge"));
    return base.power(line.at(x)) * factor(discharge, correction);
  }

  /**
   * The factor of a bias correction at a discharge; all but the minimum-variance one are the same
   * at every discharge.
   *
   * @param discharge above zero
   * @param correction which
   * @throws IllegalArgumentException if the discharge is not above zero
   */
  public double factor(double discharge, BiasCorrection correction) {
    double x = base.log(Checked.positive(discharge, "discharge"));
    double half = square(line.residualDeviation() * base.natural()) / 2;
    return switch (correction) {
      case NONE -> 1;
      case PARAMETRIC -> Math.exp(half);
      case SMEARING -> smearing;
      case MINIMUM_VARIANCE -> finney(line.degreesOfFreedom(), (1 - line.leverage(x)) * half);
    };
  }

  /**
   * The series Σ mᵖ/(m(m + 2)…(m + 2p − 2))·tᵖ/p!, whose expectation over s² (m degrees of freedom)
   * is exp(σ²(1 − V)/2) for t = s²(1 − V)/2. D. J. Finney, J. R. Stat. Soc. Suppl. 7 (1941)
   * 155-161.
   *
   * @param m degrees of freedom, 1 or more
   * @param t any sign (far extrapolation makes it negative)
   */
  static double finney(int m, double t) {
    double term = 1;
    CompensatedSum sum = new CompensatedSum();
    sum.add(term);
    for (int p = 1; p < MOST_TERMS && Math.abs(term) > 1e-17 * Math.abs(sum.value()); p++) {
      term *= m * t / (p * (m + 2.0 * (p - 1)));
      sum.add(term);
    }
    return sum.value();
  }

  private static double square(double x) {
    return x * x;
  }
}
