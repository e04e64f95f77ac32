package org.siltbench.balance.stable;

import java.util.List;

/**
 * One filter for each kind of noise, all fed with the same blocks from the beginning of a watch.
 */
final class Bank {

  final KindFilter[] filters;
  private final List<Shape> shapes;
  private final double[] column;
  private int from = -1;
  private double tailTau;
  private int next;
  private double begin;
  private double last;
  private double anchor;
  private double within;
  private double count;

  Bank(List<Shape> shapes) {
    this.shapes = shapes;
    column = new double[shapes.size() + KindFilter.FIXED];
    filters = new KindFilter[Kind.ALL.size()];
    for (int k = 0; k < filters.length; k++) {
      filters[k] = new KindFilter(Kind.ALL.get(k), shapes.size());
    }
  }

  void clear() {
    from = -1;
  }

  /** Brings the filters up to the newest block of a watch that began with block {@code start}. */
  void follow(Blocks blocks, int start, double usual, double tau) {
    if (start != from || tau != tailTau) {
      tailTau = tau;
      restart(blocks, start);
    }
    for (; next < blocks.size(); next++) {
      add(blocks.time(next), blocks.value(next) - anchor, usual / blocks.count(next));
      within += blocks.within(next);
      count += blocks.count(next);
    }
  }

  private void restart(Blocks blocks, int start) {
    from = start;
    next = start;
    begin = blocks.time(start);
    last = begin;
    anchor = blocks.value(start);
    within = 0;
    count = 0;
    for (KindFilter filter : filters) {
      filter.clear();
    }
  }

  private void add(double t, double x, double coarse) {
    column[0] = 1;
    column[1] = x;
    column[2] = Math.exp((begin - t) / tailTau);
    column[3] = (t - begin) / tailTau * column[2];
    for (int s = 0; s < shapes.size(); s++) {
      column[s + KindFilter.FIXED] = shapes.get(s).at(t, begin);
    }
    for (KindFilter filter : filters) {
      filter.add(column, t - last, coarse);
    }
    last = t;
  }

  double begin() {
    return begin;
  }

  double now() {
    return last;
  }

  double anchor() {
    return anchor;
  }

  /** Mean square of readings about the mean of their block. */
  double within() {
    return count == 0 ? 0 : within / count;
  }
}
