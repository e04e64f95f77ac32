package org.siltbench.demo;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * Exact binomial bounds of a share (Clopper and Pearson 1934): quantiles of the beta distribution.
 * For a two-sided interval give half the error to each tail.
 */
public final class ExactShare {

  private ExactShare() {}

  /**
   * Lower bound of the share behind x of n.
   *
   * @param tail probability left below the bound, within 0 to 1
   */
  public static double low(long x, long n, double tail) {
    return x == 0
        ? 0
        : BetaDistribution.of((double) x, n - x + 1.0).inverseCumulativeProbability(tail);
  }

  /**
   * Upper bound of the share behind x of n.
   *
   * @param tail probability left above the bound, within 0 to 1
   */
  public static double high(long x, long n, double tail) {
    return x >= n
        ? 1
        : BetaDistribution.of(x + 1.0, (double) (n - x)).inverseCumulativeProbability(1 - tail);
  }
}
