package org.siltbench.balance.stable;

import java.util.Arrays;

/**
 * Finds, going back from now, where the balance had come to rest: the newest stretch of blocks
 * without a step. A slow drift is no step; the tail of a settling, a touch and a jump are.
 */
final class Stretch {

  private static final double GROWTH = 1.35;
  private static final double SIGMAS = 4.5;
  private static final double QUANTILE = 0.3;
  private static final double NORMAL_AT_QUANTILE = 0.3853;

  private final Blocks blocks;
  private final double[] steps = new double[512];
  private int stepCount;

  Stretch(Blocks blocks) {
    this.blocks = blocks;
  }

  /** The first block of the stretch; the size of the history if there is none. */
  int start() {
    int size = blocks.size();
    if (size < 4) {
      return size;
    }
    gatherSteps(size);
    double sigma = stepSigma(size);
    double trend = 0;
    for (int j = 0; j < stepCount; j++) {
      double step = Math.abs(steps[j]);
      if (step > GROWTH * trend + SIGMAS * sigma) {
        return Math.min(size, size - 2 * j);
      }
      trend = Math.max(trend, j == 0 ? step : 0.5 * (step + Math.abs(steps[j - 1])));
    }
    return size - 2 * (stepCount + 1);
  }

  /** Steps between neighbouring pairs of blocks, newest first. */
  private void gatherSteps(int size) {
    stepCount = 0;
    for (int i = size - 4; i >= 0; i -= 2) {
      steps[stepCount++] = pair(i + 2) - pair(i);
    }
  }

  private double pair(int i) {
    double n = blocks.count(i) + blocks.count(i + 1);
    return (blocks.value(i) * blocks.count(i) + blocks.value(i + 1) * blocks.count(i + 1)) / n;
  }

  private double stepSigma(int size) {
    double[] sorted = new double[stepCount];
    for (int j = 0; j < stepCount; j++) {
      sorted[j] = Math.abs(steps[j]);
    }
    Arrays.sort(sorted);
    double seen = sorted[(int) (QUANTILE * stepCount)] / NORMAL_AT_QUANTILE;
    double perPair = blocks.count(size - 1) + blocks.count(size - 2);
    double white = 2 * blocks.neighbourVariance(Math.max(0, size - 6)) / perPair;
    return Math.sqrt(Math.max(seen * seen, white) + 0.04);
  }
}
