package org.siltbench.calc.detection;

import java.util.Arrays;
import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.Quantiles;
import org.siltbench.calc.stats.Summary;

/**
 * The method detection limit of 40 CFR part 136, appendix B, revision 2 (2017). Spiked samples may
 * not suit suspended solids; then the limit from method blanks stands alone.
 *
 * @param basis what it was made from
 * @param n number of results
 * @param mean their mean, in the unit of the results
 * @param deviation their standard deviation
 * @param factor t(n − 1, 0.99)
 * @param limit the detection limit, in the unit of the results
 */
public record MethodDetectionLimit(
    Basis basis, int n, double mean, double deviation, double factor, double limit) {

  /** What the limit was made from. */
  public enum Basis {
    /** Spiked samples: MDLs. */
    SPIKES,
    /** Method blanks: MDLb. */
    BLANKS
  }

  /** The fewest results revision 2 accepts. */
  public static final int FEWEST = 7;

  private static final double CONFIDENCE = 0.99;

  /**
   * MDLs = t(n − 1, 0.99)·s.
   *
   * <p>All results equal: 0, which says only that the resolution hides the spread.
   *
   * @param results of spiked samples, one unit, at least 7
   * @throws IllegalArgumentException if there are fewer than 7 or one is not finite
   */
  public static MethodDetectionLimit ofSpikes(double... results) {
    return of(Basis.SPIKES, Checked.finite(results, FEWEST, "spiked results"));
  }

  /**
   * MDLb = x̄ + t(n − 1, 0.99)·s, with a negative mean set to 0.
   *
   * <p>This is for blanks that all gave a number, as weighing blanks do. All equal: MDLb is the
   * blank's value, or 0 if that is negative. More than 100 blanks: the text also allows {@link
   * #percentileOfBlanks}.
   *
   * @param blanks results of method blanks, signed, one unit, at least 7
   * @throws IllegalArgumentException if there are fewer than 7 or one is not finite
   */
  public static MethodDetectionLimit ofBlanks(double... blanks) {
    return of(Basis.BLANKS, Checked.finite(blanks, FEWEST, "blanks"));
  }

  /**
   * The same from count, mean and deviation of the blanks.
   *
   * @param blanks at least 7
   * @param corrected true where results have the mean blank subtracted: then it is not added again
   * @throws IllegalArgumentException if there are fewer than 7
   */
  public static MethodDetectionLimit ofBlanks(Summary blanks, boolean corrected) {
    Checked.atLeast((int) Math.min(blanks.n(), Integer.MAX_VALUE), FEWEST, "number of blanks");
    return of(Basis.BLANKS, blanks, corrected ? 0 : Math.max(0, blanks.mean()));
  }

  private static MethodDetectionLimit of(Basis basis, double[] x) {
    Summary s = Summary.of(x);
    return of(basis, s, basis == Basis.BLANKS ? Math.max(0, s.mean()) : 0);
  }

  private static MethodDetectionLimit of(Basis basis, Summary s, double base) {
    int n = (int) s.n();
    double t = Quantiles.student(CONFIDENCE, n - 1.0);
    return new MethodDetectionLimit(basis, n, s.mean(), s.deviation(), t, base + t * s.deviation());
  }

  /**
   * The alternative for more than 100 blanks: the blank result of rank round(0.99·n), counted from
   * the smallest. Source: appendix B, revision 2, (2)(iii)(B).
   *
   * @param blanks more than 100 results, signed, one unit
   * @return in the unit of the results
   * @throws IllegalArgumentException if there are 100 or fewer or one is not finite
   */
  public static double percentileOfBlanks(double... blanks) {
    double[] x = Checked.finite(blanks, 101, "blanks");
    Arrays.sort(x);
    return x[(int) Math.round(CONFIDENCE * x.length) - 1];
  }

  /** The greater of the limits from spikes and from blanks, which is the MDL of revision 2. */
  public static MethodDetectionLimit greater(MethodDetectionLimit a, MethodDetectionLimit b) {
    return a.limit >= b.limit ? a : b;
  }

  /**
   * The 95 % confidence interval of a limit from spikes, from the chi-square distribution of s²: [
   * limit·√(ν/χ²(0.975)), limit·√(ν/χ²(0.025)) ]; for 7 results 0.644 and 2.202 times the limit
   * (older texts print 0.69 and 1.92).
   *
   * @return lower and upper end, in the unit of the results
   */
  public double[] confidenceInterval() {
    double nu = n - 1;
    double spread = factor * deviation;
    double base = limit - spread;
    return new double[] {
      base + spread * Math.sqrt(nu / Quantiles.chiSquare(0.975, nu)),
      base + spread * Math.sqrt(nu / Quantiles.chiSquare(0.025, nu))
    };
  }
}
