package org.siltbench.balance.stable;

/**
 * A way the display can still be moving. {@code at} is 1 now and 0 where the balance would show the
 * truth, so the coefficient of a fit is the error that is left now, in divisions.
 */
sealed interface Shape {

  /** Relative size of the error at time t. */
  double at(double t, Moments moments);

  /** Weight of the shape, if so much of it is left now, before any reading is seen; rest has 1. */
  double prior(double left, Moments moments);

  /** When things happened, seconds. */
  record Moments(double out, double load, double now) {}

  /** A settling, a warm filter, static: the rest of an exponential. */
  record Decay(double tau, double weight) implements Shape {
    @Override
    public double at(double t, Moments moments) {
      return Math.exp((moments.now - t) / tau);
    }

    @Override
    public double prior(double left, Moments moments) {
      return weight;
    }
  }

  /** Creep of the weighing cell: grows with the logarithm of time under load. */
  record Creep(double unit, double usual, double weight) implements Shape {
    @Override
    public double at(double t, Moments moments) {
      return Math.log1p((t - moments.load) / unit)
          / Math.log1p((moments.now - moments.load) / unit);
    }

    @Override
    public double prior(double left, Moments moments) {
      double size = left / Math.log1p((moments.now - moments.load) / unit) / usual;
      return weight * Math.exp(-size * size / 2);
    }
  }

  /** Moisture: steady since the desiccator. */
  record Uptake(double weight) implements Shape {
    @Override
    public double at(double t, Moments moments) {
      return (t - moments.out) / (moments.now - moments.out);
    }

    @Override
    public double prior(double left, Moments moments) {
      return weight;
    }
  }
}
