package org.siltbench.calc.montecarlo;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.TSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** Fills columns with draws from a shape: one tight loop per shape. */
final class Draws {

  private static final double TWO_TO_MINUS_53 = 0x1.0p-53;

  private final UniformRandomProvider random;
  private final ContinuousSampler gaussian;

  Draws(UniformRandomProvider random) {
    this.random = random;
    this.gaussian = ZigguratSampler.NormalizedGaussian.of(random);
  }

  void fill(double[] column, int count, Input input) {
    double value = input.value();
    Spread spread = input.spread();
    if (spread instanceof Spread.Normal normal) {
      normal(column, count, value, normal.standardDeviation());
    } else if (spread instanceof Spread.Rectangular rectangular) {
      rectangular(column, count, value, rectangular.halfWidth());
    } else if (spread instanceof Spread.Triangular triangular) {
      triangular(column, count, value, triangular.halfWidth());
    } else if (spread instanceof Spread.Student student) {
      student(column, count, value, student);
    }
  }

  private void normal(double[] column, int count, double value, double deviation) {
    for (int i = 0; i < count; i++) {
      column[i] = value + deviation * gaussian.sample();
    }
  }

  private void rectangular(double[] column, int count, double value, double half) {
    for (int i = 0; i < count; i++) {
      column[i] = value + half * symmetric();
    }
  }

  private void triangular(double[] column, int count, double value, double half) {
    for (int i = 0; i < count; i++) {
      column[i] = value + half * ((symmetric() + symmetric()) / 2);
    }
  }

  private void student(double[] column, int count, double value, Spread.Student shape) {
    ContinuousSampler t = TSampler.of(random, shape.degreesOfFreedom());
    for (int i = 0; i < count; i++) {
      column[i] = value + shape.scale() * t.sample();
    }
  }

  /** A uniform number in [−1, 1). */
  private double symmetric() {
    return (random.nextLong() >> 10) * TWO_TO_MINUS_53;
  }
}
