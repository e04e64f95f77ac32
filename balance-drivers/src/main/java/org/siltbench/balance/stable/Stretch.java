package org.siltbench.balance.stable;

import java.util.Arrays;

/**
 * Finds, going back from now, where the balance had come to rest: the newest stretch of blocks
 * without a step. A slow drift is no step; the tail of a settling, a touch and a jump are.
 */
final class Stretch {

  private static final double GROWTH = 0.4;
  private static final double USUAL_TAU_S = 0.8;
  private static final double STEADY = 0.1;
  private static final double SLOWEST = 0.66;
  private static final double LARGE = 25;
  private static final double LARGE_PART = 0.2;
  private static final double TAIL = 2.5;
  private static final double HARMLESS = 0.02;
  private static final double SIGMAS = 4;
  private static final double ROUNDING = 0.16;
  private static final double QUANTILE = 0.3;
  private static final double NORMAL_AT_QUANTILE = 0.3853;

  private final Blocks blocks;
  private final double[] steps = new double[512];
  private int stepCount;
  private int begin;
  private Settling settling = Settling.NONE;

  Stretch(Blocks blocks) {
    this.blocks = blocks;
  }

  /** The tail of the settling that is left where the stretch begins. */
  Settling settling() {
    return settling;
  }

  /** The first block of the stretch; the size of the history if there is none. */
  int start(double tolerance) {
    begin = search(tolerance);
    return begin;
  }

  /** The start found last. */
  int begin() {
    return begin;
  }

  private int search(double tolerance) {
    int size = blocks.size();
    if (size < 4) {
      return size;
    }
    gatherSteps(size);
    double sigma = stepSigma(size);
    double usual = SIGMAS * sigma + HARMLESS * tolerance;
    settling = new Settling(TAIL * usual, USUAL_TAU_S);
    for (int j = 0; j < stepCount; j++) {
      double trend = trend(j);
      double room = GROWTH * Math.abs(trend) + usual;
      if (Math.abs(steps[j] - trend) > room) {
        settling = new Settling(TAIL * room, USUAL_TAU_S);
        return intoTail(j, LARGE * sigma + LARGE_PART * tolerance);
      }
    }
    return 0;
  }

  /**
   * Goes on back into the tail of the settling, as long as it is one and its course can be told.
   */
  private int intoTail(int at, double most) {
    int j = at;
    while (Math.abs(steps[j]) < most && dies(j) && dies(j + 1) && goesOn(j)) {
      j++;
    }
    int size = blocks.size();
    if (!dies(j)) {
      return size - j;
    }
    double lag = blocks.time(size - 4 - j) - blocks.time(size - 6 - j);
    double ratio = steps[j] / steps[j + 2];
    settling = new Settling(2 * Math.abs(steps[j]) / (1 - ratio), -lag / Math.log(ratio));
    return size - j - 2;
  }

  /** A settling goes on as it went: its steps shrink at a steady rate. */
  private boolean goesOn(int j) {
    return Math.abs(steps[j] / steps[j + 2] - steps[j + 1] / steps[j + 3]) < STEADY;
  }

  private boolean dies(int j) {
    if (j + 2 >= stepCount) {
      return false;
    }
    double ratio = steps[j] / steps[j + 2];
    return ratio > 0.01 && ratio < SLOWEST;
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
