package org.siltbench.balance.stable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

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
  private static final int SPREAD_PLACES = 40;
  private static final int STEEP_PLACES = 6;
  private static final int MOST_PLACES = SPREAD_PLACES + STEEP_PLACES;
  private static final int EDGE = 2;
  private static final int COLUMNS = STEPS * (LAG_S.length + MOST_PLACES);

  private final KindFilter[] filters = new KindFilter[Kind.ALL.size()];
  private final double[] column = new double[KindFilter.FIXED + COLUMNS + STEPS];
  private final double[] jumpAt = new double[MOST_PLACES];

  /** An exponential at the beginning over what it is at a place. */
  private final double[][] grown = new double[MOST_PLACES][STEPS];

  private int places;
  private double spacing = 1;
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
    begin = blocks.time(from);
    place(blocks, from);
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

  /** Places all over the watch, and those of the largest steps: a jump must be met to the block. */
  private void place(Blocks blocks, int from) {
    int to = blocks.size() - EDGE;
    int room = to - from - EDGE;
    int stride = Math.max(2, (room + SPREAD_PLACES - 1) / SPREAD_PLACES);
    places = 0;
    for (int i = from + EDGE; i <= to && places < SPREAD_PLACES; i += stride) {
      put(blocks, i);
    }
    spacing = places < 2 ? 1 : (jumpAt[places - 1] - jumpAt[0]) / (places - 1);
    steepest(blocks, from + EDGE, to).forEach(i -> put(blocks, i));
  }

  private void put(Blocks blocks, int i) {
    jumpAt[places] = (blocks.time(i - 1) + blocks.time(i)) / 2;
    for (int s = 0; s < STEPS; s++) {
      grown[places][s] = 1 / shapeAt(s, jumpAt[places]);
    }
    places++;
  }

  /** The blocks before which the mean of two steps most. */
  private static List<Integer> steepest(Blocks blocks, int from, int to) {
    return IntStream.rangeClosed(from, to)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -step(blocks, i)))
        .limit(STEEP_PLACES)
        .toList();
  }

  private static double step(Blocks blocks, int i) {
    double after = blocks.value(i) + blocks.value(Math.min(i + 1, blocks.size() - 1));
    return Math.abs(after - blocks.value(i - 1) - blocks.value(i - 2));
  }

  private void shapes(double t) {
    int shapes = KindFilter.FIXED + COLUMNS;
    for (int s = 0; s < STEPS; s++) {
      column[shapes + s] = shapeAt(s, t);
    }
    int at = KindFilter.FIXED;
    for (double tau : LAG_S) {
      Arrays.fill(column, at, at + STEPS, Math.exp((begin - t) / tau));
      at += STEPS;
    }
    for (int j = 0; j < places; j++) {
      for (int s = 0; s < STEPS; s++) {
        column[at++] = t < jumpAt[j] ? 0 : column[shapes + s] * grown[j][s];
      }
    }
    Arrays.fill(column, at, shapes, 0);
  }

  private double shapeAt(int s, double t) {
    return SLOW.get(s).at(t, begin);
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
    return spacing;
  }

  /** What is left now of a mask of one. */
  double maskNow(int j, int s) {
    return mask(j, s, now);
  }

  /** What is left now of an exponential that was one at the beginning. */
  double shapeNow(int s) {
    return shapeAt(s, now);
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
