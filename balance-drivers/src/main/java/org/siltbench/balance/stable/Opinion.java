package org.siltbench.balance.stable;

/**
 * What the judge thinks of a watch.
 *
 * @param recorded the whole division nearest to what the balance shows now
 * @param from first block of the accepted stretch
 * @param meanError standard error of its level, divisions
 * @param slope straight slope over the watch, divisions a second
 * @param slopeError its standard error
 * @param wrong probability that {@code recorded} is off by more than the tolerance in a way that a
 *     watch of 15 s can tell from rest
 * @param doubtful the same, whether a watch can tell or not
 * @param uptake posterior weight of moisture
 * @param reading standard deviation of single readings, divisions
 */
record Opinion(
    double recorded,
    int from,
    double meanError,
    double slope,
    double slopeError,
    double wrong,
    double doubtful,
    double uptake,
    double reading) {

  private static final double LIKELY = 0.5;
  private static final double SIGMAS = 4;

  /** True if the display moves for sure, and likely to a truth beyond the tolerance. */
  boolean drifts() {
    return doubtful > LIKELY && Math.abs(slope) > SIGMAS * slopeError;
  }
}
