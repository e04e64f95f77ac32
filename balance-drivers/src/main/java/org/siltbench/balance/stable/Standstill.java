package org.siltbench.balance.stable;

/**
 * How long the display has shown one and the same value. While it does, the mass stays within that
 * division, whatever moves: a drift that shows in a watch would have changed the last digit. That
 * holds for the middle of the time; near its ends noise may have held a digit for some readings.
 */
final class Standstill {

  private static final double WATCH_S = 15;

  /** Half of them at each end: noise holds a digit beside its division for five once in 32. */
  private static final int LOST = 10;

  private double value = Double.NaN;
  private double since;
  private double last;
  private int count;

  void clear() {
    value = Double.NaN;
    count = 0;
  }

  /** Takes a reading, seconds and divisions. */
  void add(double t, double x) {
    if (x != value) {
      value = x;
      since = t;
      count = 0;
    }
    last = t;
    count++;
  }

  /** True once it has lasted for a watch, the ends not counted. */
  boolean longEnough() {
    return (last - since) * (count - LOST) >= WATCH_S * count;
  }

  /** The value shown, divisions. */
  double value() {
    return value;
  }

  /** Since when, seconds. */
  double since() {
    return since;
  }
}
