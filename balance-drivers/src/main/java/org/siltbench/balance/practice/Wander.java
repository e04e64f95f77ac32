package org.siltbench.balance.practice;

import java.util.random.RandomGenerator;

/** An Ornstein-Uhlenbeck process of unit variance: a draught's push on the pan. */
public final class Wander {

  private final double correlation;
  private final RandomGenerator random;
  private double value;

  /** Begins anywhere in its range. */
  public Wander(double correlationSeconds, RandomGenerator random) {
    this.correlation = correlationSeconds;
    this.random = random;
    this.value = random.nextGaussian();
  }

  /** Moves on, exactly for any step. */
  public void step(double dt) {
    double keep = Math.exp(-dt / correlation);
    value = keep * value + Math.sqrt(1 - keep * keep) * random.nextGaussian();
  }

  /** Where it stands. */
  public double value() {
    return value;
  }
}
