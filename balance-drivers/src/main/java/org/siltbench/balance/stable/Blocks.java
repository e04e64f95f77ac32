package org.siltbench.balance.stable;

import java.util.Arrays;

/**
 * A bounded history of one load: readings gathered into blocks of half a second. Values are in
 * divisions of the balance, times in seconds. A slow balance fills one block with each reading.
 */
final class Blocks {

  static final double SPAN_S = 0.5;
  private static final int CAPACITY = 480;
  private static final int USUAL = 4;
  private static final int NEWEST = 8;
  private static final double NORMAL_MEDIAN = 0.6745;

  private final double[] time = new double[CAPACITY];
  private final double[] value = new double[CAPACITY];
  private final double[] count = new double[CAPACITY];
  private final double[] differences = new double[CAPACITY];
  private final double[] differenceCount = new double[CAPACITY];
  private final double[] changes = new double[CAPACITY];
  private final double[] within = new double[CAPACITY];
  private int first;
  private int closed;
  private double openUntil;
  private double sumTime;
  private double sumValue;
  private double sumSquares;
  private double openSquares;
  private double openFirst;
  private int open;
  private int openDifferences;
  private int openChanges;
  private double last = Double.NaN;

  /** Forgets everything. */
  void clear() {
    first = 0;
    closed = 0;
    open = 0;
    last = Double.NaN;
    resetOpen(0);
  }

  /** Takes a reading; true if it closed a block. */
  boolean add(double t, double x) {
    boolean closes = open > 0 && t >= openUntil;
    if (closes) {
      close();
    }
    if (open == 0) {
      resetOpen(t);
    }
    if (!Double.isNaN(last)) {
      sumSquares += (x - last) * (x - last);
      openDifferences++;
      openChanges += x == last ? 0 : 1;
    }
    last = x;
    sumTime += t;
    sumValue += x;
    openFirst = open == 0 ? x : openFirst;
    openSquares += (x - openFirst) * (x - openFirst);
    open++;
    return closes;
  }

  private void resetOpen(double t) {
    openUntil = t + SPAN_S;
    sumTime = 0;
    sumValue = 0;
    sumSquares = 0;
    openSquares = 0;
    openDifferences = 0;
    openChanges = 0;
  }

  private void close() {
    int at = slot(closed);
    if (closed == CAPACITY) {
      first = (first + 1) % CAPACITY;
      closed--;
    }
    time[at] = sumTime / open;
    value[at] = sumValue / open;
    count[at] = open;
    differences[at] = sumSquares;
    differenceCount[at] = openDifferences;
    changes[at] = openChanges;
    double off = sumValue / open - openFirst;
    within[at] = Math.max(0, openSquares - open * off * off);
    closed++;
    open = 0;
  }

  private int slot(int i) {
    return (first + i) % CAPACITY;
  }

  /** The first block at or after a time; the size if there is none. */
  int since(double seconds) {
    int at = size();
    while (at > 0 && time(at - 1) >= seconds) {
      at--;
    }
    return at;
  }

  /** How many blocks are closed. */
  int size() {
    return closed;
  }

  double time(int i) {
    return time[slot(i)];
  }

  double value(int i) {
    return value[slot(i)];
  }

  double count(int i) {
    return count[slot(i)];
  }

  /** Readings in a block, as a rule, from block {@code from} on. */
  double usualCount(int from) {
    int n = Math.min(USUAL, closed - from);
    double sum = 0;
    for (int i = from; i < from + n; i++) {
      sum += count(i);
    }
    return sum / n;
  }

  /** Mean square of readings about the mean of their block, over the newest blocks. */
  double withinNewest(int from) {
    double sum = 0;
    double n = 0;
    for (int i = Math.max(from, closed - NEWEST); i < closed; i++) {
      sum += within(i);
      n += count(i);
    }
    return sum / n;
  }

  /** Variance of a block from second differences of the newest: blind to any slow course. */
  double bendVariance(int from) {
    int first = Math.max(from, closed - NEWEST);
    double[] bends = new double[Math.max(0, closed - first - 2)];
    for (int i = 0; i < bends.length; i++) {
      bends[i] = Math.abs(value(first + i) - 2 * value(first + i + 1) + value(first + i + 2));
    }
    Arrays.sort(bends);
    double median = bends.length == 0 ? 0 : bends[bends.length / 2] / NORMAL_MEDIAN;
    return median * median / 6;
  }

  /** Sum of squares of the readings of a block about their mean. */
  double within(int i) {
    return within[slot(i)];
  }

  /**
   * Variance of one reading from the differences of neighbours, over blocks {@code from} to the
   * newest: blind to drift (von Neumann 1941).
   */
  double neighbourVariance(int from) {
    double sum = 0;
    double n = 0;
    for (int i = from; i < closed; i++) {
      int at = slot(i);
      // The first difference of the first block reaches over the edge: leave its share out.
      sum += i == from ? 0 : differences[at];
      n += i == from ? 0 : differenceCount[at];
    }
    return n == 0 ? 0 : sum / (2 * n);
  }

  /** How often the shown value changed, over blocks {@code from} to the newest. */
  double changes(int from) {
    double sum = 0;
    for (int i = from + 1; i < closed; i++) {
      sum += changes[slot(i)];
    }
    return sum;
  }
}
