package org.siltbench.balance.stable;

/** A look at the last second or so: enough for a provisional value, never for a recorded one. */
final class Glance {

  private static final double SPAN_S = 0.6;
  private static final int CAPACITY = 64;
  private static final int LEAST = 4;

  private final double[] time = new double[CAPACITY];
  private final double[] value = new double[CAPACITY];
  private int size;
  private double usual;

  void clear() {
    size = 0;
  }

  /** Standard deviation of single readings as known from before, divisions. */
  void expect(double noise) {
    usual = noise;
  }

  void add(double t, double x) {
    int drop = 0;
    while (drop < size && size - drop >= LEAST && time[drop] < t - SPAN_S) {
      drop++;
    }
    drop = size - drop == CAPACITY ? 1 : drop;
    System.arraycopy(time, drop, time, 0, size - drop);
    System.arraycopy(value, drop, value, 0, size - drop);
    size -= drop;
    time[size] = t;
    value[size++] = x;
  }

  /** True if the newer half agrees with the older one. */
  boolean calm(double tolerance) {
    if (size < LEAST) {
      return false;
    }
    int half = size / 2;
    double change = Math.abs(mean(half, size) - mean(0, half));
    double allowed = Math.max(tolerance, Math.max(1, 2 * sigma()));
    return change <= 0.4 * allowed + sigma() * Math.sqrt(2.0 / half);
  }

  /** True while a value held still stands. */
  boolean holds(double held, double tolerance) {
    double allowed = Math.max(tolerance, Math.max(1, 2 * sigma()));
    return Math.abs(mean(0, size) - held) <= allowed + 2 * sigma();
  }

  private double mean(int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += value[i];
    }
    return sum / (to - from);
  }

  /** From neighbouring differences. */
  private double sigma() {
    double sum = 0;
    for (int i = 1; i < size; i++) {
      sum += (value[i] - value[i - 1]) * (value[i] - value[i - 1]);
    }
    return Math.max(usual, Math.sqrt(sum / (2.0 * Math.max(1, size - 1))));
  }
}
