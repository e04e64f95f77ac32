package org.siltbench.balance.stable;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The upper tail of the standard normal distribution from a table: asked for millions of times. */
final class NormalTail {

  private static final double MOST = 8;
  private static final int STEPS = 64;
  private static final double[] TABLE = new double[((int) (2 * MOST)) * STEPS + 2];

  static {
    NormalDistribution normal = NormalDistribution.of(0, 1);
    for (int i = 0; i < TABLE.length; i++) {
      TABLE[i] = normal.survivalProbability(i / (double) STEPS - MOST);
    }
  }

  private NormalTail() {}

  /** P(Z above z), linear between steps of 1/64; beyond 8 it is 0 or 1. */
  static double above(double z) {
    if (!(z < MOST)) {
      return 0;
    }
    if (z <= -MOST) {
      return 1;
    }
    double at = (z + MOST) * STEPS;
    int i = (int) at;
    return TABLE[i] + (at - i) * (TABLE[i + 1] - TABLE[i]);
  }
}
