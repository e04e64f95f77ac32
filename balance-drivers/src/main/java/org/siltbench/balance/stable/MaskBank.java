package org.siltbench.balance.stable;

import java.util.ArrayList;
import java.util.List;

/**
 * Filters fed with every slow exponential and with every mask it may have: a slow settling, or a
 * jump of the same charge at one of many places in the watch.
 */
final class MaskBank {

  /** The slow exponentials. */
  static final List<Shape.Decay> SLOW = slow();

  /** Time constants of settlings slower than usual, s. */
  private static final double[] LAG_S = {2.5, 5, 10};

  private static final double SLOWEST_S = 320;
  private static final double FASTEST_S = 18;
  private static final int STEPS = 10;
  private static final int MOST_PLACES = 40;
  private static final int EDGE = 2;
  private static final int COLUMNS = STEPS * (LAG_S.length + MOST_PLACES);

  private final KindFilter[] filters = new KindFilter[Kind.ALL.size()];
  private final double[] column = new double[KindFilter.FIXED + COLUMNS + STEPS];
  private final double[] jumpAt = new double[MOST_PLACES];
  private int places;
  private double begin;
  private double now;

  MaskBank() {
    int[] partner = new int[COLUMNS];
    for (int c = 0; c < COLUMNS; c++) {
      partner[c] = COLUMNS + c % STEPS;
    }
    for (int k = 0; k < filters.length; k++) {
      filters[k] = new KindFilter(Kind.ALL.get(k), COLUMNS + STEPS, partner);
    }
  }

  private static List<Shape.Decay> slow() {
    List<Shape.Decay> slow = new ArrayList<>();
    double width = Math.log(SLOWEST_S / FASTEST_S) / STEPS;
    for (int i = 0; i < STEPS; i++) {
      slow.add(new Shape.Decay(FASTEST_S * Math.exp((i + 0.5) * width), width));
    }
    return List.copyOf(slow);
  }

  /** Runs the filters of the kinds of noise asked for over a watch. */
  void run(Blocks blocks, int from, double tailTau, Fits fits, List<Integer> kinds) {
    place(blocks, from);
    begin = blocks.time(from);
    now = begin;
    kinds.forEach(k -> filters[k].clear());
    for (int i = from; i < blocks.size(); i++) {
      double t = blocks.time(i);
      column[0] = 1;
      column[1] = blocks.value(i) - fits.bank.anchor();
      column[2] = Math.exp((begin - t) / tailTau);
      column[3] = (t - begin) / tailTau * column[2];
      shapes(t);
      double sinceLast = t - now;
      double coarse = fits.perBlock / blocks.count(i);
      kinds.forEach(k -> filters[k].add(column, sinceLast, coarse));
      now = t;
    }
  }

  private void place(Blocks blocks, int from) {
    int to = blocks.size() - EDGE;
    int room = to - from - EDGE;
    int stride = Math.max(2, (room + MOST_PLACES - 1) / MOST_PLACES);
    places = 0;
    for (int i = from + EDGE; i <= to && places < MOST_PLACES; i += stride) {
      jumpAt[places++] = (blocks.time(i - 1) + blocks.time(i)) / 2;
    }
  }

  private void shapes(double t) {
    int at = KindFilter.FIXED;
    for (int j = 0; j < LAG_S.length + MOST_PLACES; j++) {
      for (int s = 0; s < STEPS; s++) {
        column[at++] = j < masks() ? mask(j, s, t) : 0;
      }
    }
    for (Shape.Decay decay : SLOW) {
      column[at++] = decay.at(t, begin);
    }
  }

  private double mask(int j, int s, double t) {
    if (!jumps(j)) {
      return Math.exp((begin - t) / LAG_S[j]);
    }
    double since = t - jumpAt[j - LAG_S.length];
    return since < 0 ? 0 : Math.exp(-since / SLOW.get(s).tau());
  }

  /** How many masks each exponential has. */
  int masks() {
    return LAG_S.length + places;
  }

  /** True for a jump. */
  boolean jumps(int j) {
    return j >= LAG_S.length;
  }

  /** Seconds between the places of jumps. */
  double spacing() {
    return places < 2 ? 1 : (jumpAt[places - 1] - jumpAt[0]) / (places - 1);
  }

  /** What is left now of a mask of one. */
  double maskNow(int j, int s) {
    return mask(j, s, now);
  }

  /** What is left now of an exponential that was one at the beginning. */
  double shapeNow(int s) {
    return SLOW.get(s).at(now, begin);
  }

  KindFilter filter(int kind) {
    return filters[kind];
  }

  /** Column of an exponential among the shapes of a filter. */
  int shapeColumn(int s) {
    return COLUMNS + s;
  }

  /** Column of one of its masks. */
  int maskColumn(int j, int s) {
    return j * STEPS + s;
  }
}
