package org.siltbench.demo.coverage;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * How often the truth lay within the stated interval.
 *
 * @param samples how many were tried
 * @param firstOrder how often within value ± U of the first order
 * @param distributions how often within the interval by distributions
 */
public record Coverage(int samples, int firstOrder, int distributions) {

  /** Both together. */
  public Coverage plus(Coverage other) {
    return new Coverage(
        samples + other.samples,
        firstOrder + other.firstOrder,
        distributions + other.distributions);
  }

  /** Lower end of the exact binomial interval of a share (Clopper and Pearson 1934). */
  public static double low(int within, int of, double confidence) {
    return within == 0
        ? 0
        : BetaDistribution.of(within, of - within + 1.0)
            .inverseCumulativeProbability((1 - confidence) / 2);
  }

  /** Upper end of the exact binomial interval of a share. */
  public static double high(int within, int of, double confidence) {
    return within == of
        ? 1
        : BetaDistribution.of(within + 1.0, of - within)
            .inverseCumulativeProbability((1 + confidence) / 2);
  }
}
