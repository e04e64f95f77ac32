package org.siltbench.balance.stable;

import java.util.Arrays;

/**
 * Finds, going back from now, where the balance had come to rest: the newest stretch of blocks
 * without a step. A slow drift is no step; the tail of a settling, a touch and a jump are.
 */
final class Stretch {

  private static final double GROWTH = 0.4;
  private static final double HARMLESS = 0.02;
  private static final double SIGMAS = 4;
  private static final double ROUNDING = 0.16;
  private static final double QUANTILE = 0.3;
  private static final double NORMAL_AT_QUANTILE = 0.3853;

  private final Blocks blocks;
  private final double[] steps = new double[512];
  private int stepCount;

  Stretch(Blocks blocks) {
    this.blocks = blocks;
  }

  /** The first block of the stretch; the size of the history if there is none. */
  int start(double tolerance) {
    int size = blocks.size();
    if (size < 4) {
      return size;
    }
    gatherSteps(size);
    double sigma = stepSigma(size);
    for (int j = 0; j < stepCount; j++) {
      double trend = trend(j);
      double room = GROWTH * Math.abs(trend) + SIGMAS * sigma + HARMLESS * tolerance;
      if (Math.abs(steps[j] - trend) > room) {
        return size - j;
      }
    }
    return 0;
  }

  /** The mean of the three steps after step {@code j}: a steady drift goes on as it went. */
  private double trend(int j) {
    int n = 0;
    double sum = 0;
    for (int k = j - 2; k >= 0 && n < 3; k -= 2) {
      sum += steps[k];
      n++;
    }
    return n < 2 ? 0 : sum / n;
  }

  /** Steps between neighbouring pairs of blocks, newest first. */
  private void gatherSteps(int size) {
    stepCount = 0;
    for (int i = size - 4; i >= 0; i--) {
      steps[stepCount++] = pair(i + 2) - pair(i);
    }
  }

  private double pair(int i) {
    double n = blocks.count(i) + blocks.count(i + 1);
    return (blocks.value(i) * blocks.count(i) + blocks.value(i + 1) * blocks.count(i + 1)) / n;
  }

  private double stepSigma(int size) {
    int n = Math.max(1, stepCount - 2);
    double[] sorted = new double[n];
    for (int j = 0; j < n; j++) {
      sorted[j] = Math.abs(steps[j] - (stepCount > 2 ? steps[j + 2] : 0));
    }
    Arrays.sort(sorted);
    double seen = sorted[(int) (QUANTILE * n)] / NORMAL_AT_QUANTILE / Math.sqrt(3);
    double perPair = blocks.count(size - 1) + blocks.count(size - 2);
    double white = 2 * blocks.neighbourVariance(Math.max(0, size - 6)) / perPair;
    return Math.sqrt(Math.max(seen * seen, white) + ROUNDING);
  }
}
