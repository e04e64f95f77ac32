package org.siltbench.balance.stable;

import java.util.Arrays;

/**
 * What the display of the empty pan says of the noise, kind by kind: nothing lies there that could
 * drift, so all it does is noise.
 */
final class Idle {

  private static final int MOST = 16;
  private static final int LEAST = 5;
  private static final int DROPPED = 2;
  private static final double DISTURBED = 6;
  private static final double STRAIGHT = 0.97;

  private final Blocks blocks = new Blocks();
  private final KindFilter[] filters = new KindFilter[Kind.ALL.size()];
  private final double[] column = {1, 0, 0, 0};
  private final double[] squares = new double[filters.length];
  private final double[] logs = new double[filters.length];
  private long origin;
  private boolean begun;
  private boolean summed;
  private int n;
  private double reading;

  Idle() {
    for (int k = 0; k < filters.length; k++) {
      filters[k] = new KindFilter(Kind.ALL.get(k), 0);
    }
  }

  /** What was seen says nothing of what comes. */
  void clear() {
    blocks.clear();
    begun = false;
  }

  /** Takes a reading of the empty pan. */
  void add(long nanos, long nanograms) {
    if (!begun) {
      blocks.clear();
      origin = nanos;
      begun = true;
    }
    blocks.add((nanos - origin) / 1e9, (double) nanograms);
  }

  /** A load has come. */
  void close() {
    begun = false;
    summed = false;
    n = 0;
  }

  /** Sums up, once per load, leaving out the last second, in which a hand was near. */
  void sum(double division) {
    if (summed) {
      return;
    }
    summed = true;
    int to = undisturbed(blocks.size() - DROPPED, division);
    int from = Math.max(0, to - MOST);
    n = to - from >= LEAST && !climbs(from, to) ? to - from : 0;
    if (n > 0) {
      filter(from, division);
    }
  }

  private void filter(int from, double division) {
    double usual = blocks.usualCount(from);
    for (KindFilter filter : filters) {
      filter.clear();
    }
    double within = 0;
    for (int i = from; i < from + n; i++) {
      column[1] = (blocks.value(i) - blocks.value(from)) / division;
      double sinceLast = i == from ? 0 : blocks.time(i) - blocks.time(i - 1);
      for (KindFilter filter : filters) {
        filter.add(column, sinceLast, usual / blocks.count(i));
      }
      within += blocks.within(i) / division / division;
    }
    reading = Math.sqrt(within / (usual * n) + about(filters[0]) / (n - 1));
    for (int k = 0; k < filters.length; k++) {
      // An empty pan often rests in the middle of a division, where rounding hides its noise.
      double rounding = (n - 1) / 12.0 / usual / (1 - filters[k].kind.share());
      squares[k] = Math.max(about(filters[k]), rounding);
      logs[k] = filters[k].logs + Math.log(filters[k].fixed[0][0]);
    }
  }

  /**
   * True if nearly all that the blocks do is to follow a straight line: then what lies there passes
   * through zero, a warm filter lighter than nothing for instance, and is no empty pan.
   */
  private boolean climbs(int from, int to) {
    double time = 0;
    double value = 0;
    for (int i = from; i < to; i++) {
      time += blocks.time(i) / (to - from);
      value += blocks.value(i) / (to - from);
    }
    double squares = 0;
    double cross = 0;
    double about = 0;
    for (int i = from; i < to; i++) {
      squares += (blocks.time(i) - time) * (blocks.time(i) - time);
      cross += (blocks.time(i) - time) * (blocks.value(i) - value);
      about += (blocks.value(i) - value) * (blocks.value(i) - value);
    }
    return cross * cross / squares > STRAIGHT * about;
  }

  /** Sum of squares about the level. */
  private static double about(KindFilter filter) {
    double[][] x = filter.fixed;
    return x[1][1] - x[0][1] * x[0][1] / x[0][0];
  }

  /** Where a hand or the load begins to show, if it does before block {@code to}. */
  private int undisturbed(int to, double division) {
    if (to < LEAST) {
      return 0;
    }
    double[] values = new double[to];
    for (int i = 0; i < to; i++) {
      values[i] = blocks.value(i);
    }
    double median = median(values);
    for (int i = 0; i < to; i++) {
      values[i] = Math.abs(blocks.value(i) - median);
    }
    double room = DISTURBED * median(values) + division;
    int at = 0;
    while (at < to && Math.abs(blocks.value(at) - median) <= room) {
      at++;
    }
    return at;
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
  }

  /** Degrees of freedom it gives to the noise; zero if nothing is known. */
  int dof() {
    return Math.max(0, n - 1);
  }

  /** Standard deviation of single readings, divisions; zero if nothing is known. */
  double reading() {
    return n == 0 ? 0 : reading;
  }

  /** Sum of squares under a kind of noise. */
  double squares(int kind) {
    return n == 0 ? 0 : squares[kind];
  }

  /** The logarithms that go with it. */
  double logs(int kind) {
    return n == 0 ? 0 : logs[kind];
  }
}
