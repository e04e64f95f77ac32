package org.siltbench.balance.stable;

import java.util.List;

/** Fits of rest and of every shape under every kind of noise, by generalised least squares. */
final class Fits {

  private static final double STRANGE = 8;
  private static final double UNSEEN = 10;
  private static final double LEAST_VARIANCE = 0.02;

  final List<Shape> shapes;
  final Bank bank;
  final int kinds = Kind.ALL.size();

  /** What the balance shows at rest, and its variance. */
  final double[] level = new double[kinds];

  final double[] levelVariance = new double[kinds];

  /** Its variance where nothing moves, by noise alone: rounding is a bias there, and bounded. */
  final double[] restVariance = new double[kinds];

  /** The most that rounding may shift the mean of readings with so little noise. */
  final double[] roundingBias = new double[kinds];

  /** Standard deviation of single readings. */
  final double[] noise = new double[kinds];

  /** Variance of a block. */
  final double[] blockVariance = new double[kinds];

  /** Standard error of a drift over 15 s by ordinary least squares. */
  final double[] driftError = new double[kinds];

  /** True where the residuals are much larger than noise known from elsewhere. */
  final boolean[] strange = new boolean[kinds];

  final double[] logRest = new double[kinds];

  /** Coefficient of each shape, its variance, and the mean of the shape over the watch. */
  final double[][] left;

  final double[][] leftVariance;
  final double[][] meanShape;
  final double[][] logShape;

  /** Each shape now. */
  final double[] now;

  /** The best logarithm of all. */
  double top;

  /** Degrees of freedom of the noise. */
  double dof;

  private final Projection projection = new Projection();

  /** Readings in a block, as a rule. */
  double perBlock;

  /** The least variance of a block: what rounding makes. */
  double floor;

  private double bend;

  /** How much blocks scatter about the course that suits them best: the kind 0 is white. */
  private double scatter;

  private double mostNoise;

  Fits(List<Shape> shapes) {
    this.shapes = shapes;
    bank = new Bank(shapes);
    left = new double[kinds][shapes.size()];
    leftVariance = new double[kinds][shapes.size()];
    meanShape = new double[kinds][shapes.size()];
    logShape = new double[kinds][shapes.size()];
    now = new double[shapes.size()];
  }

  /** What the balance shows now, if a shape is right. */
  double value(int k, int s) {
    return level[k] + left[k][s] * (now[s] - meanShape[k][s]);
  }

  /** The best logarithm under a kind of noise. */
  double best(int k) {
    double best = logRest[k];
    for (double log : logShape[k]) {
      best = Math.max(best, log);
    }
    return best;
  }

  void fit(Blocks blocks, int from, Settling settling, double[] driftVariance, Idle idle) {
    perBlock = blocks.usualCount(from);
    bank.follow(blocks, from, perBlock, settling.tau());
    for (int s = 0; s < now.length; s++) {
      now[s] = shapes.get(s).at(bank.now(), bank.begin());
    }
    int n = blocks.size() - from;
    dof = Math.max(1.5, n - 3 + idle.dof());
    // Where the last digit seldom changes, its rounding errors are few.
    double rounding = Math.min(n / 2.0, n / (blocks.changes(from) + 1)) / 12;
    floor = Math.max(rounding, LEAST_VARIANCE / perBlock);
    bend = blocks.bendVariance(from);
    mostNoise =
        idle.dof() > 0
            ? 2.5 * idle.reading() + 0.5
            : 3 * Math.sqrt(Math.max(1.0 / 12, blocks.withinNewest(from) + bend));
    top = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < kinds; k++) {
      fit(k, settling, idle);
      noise(k, driftVariance[k]);
    }
  }

  private void fit(int k, Settling settling, Idle idle) {
    KindFilter f = bank.filters[k];
    projection.take(f, settling.size(), floor, dof);
    double before = idle.squares(k);
    double rss = before + projection.squares();
    double fixed = fixed(k, f, projection, idle);
    level[k] = bank.anchor() + projection.level();
    logRest[k] = fixed + log(rss);
    double least = rss;
    for (int s = 0; s < now.length; s++) {
      projection.shape(f, s);
      double r = Math.max(before, rss - projection.explained());
      least = Math.min(least, r);
      left[k][s] = projection.coefficient();
      leftVariance[k][s] = variance(r) / projection.information();
      meanShape[k][s] = projection.meanShape();
      logShape[k][s] = fixed + log(r);
      top = Math.max(top, logShape[k][s]);
    }
    top = Math.max(top, logRest[k]);
    levelVariance[k] = variance(least) / projection.ones();
    noise[k] = Math.max(least / dof, LEAST_VARIANCE / perBlock);
    restVariance[k] = noise[k] / projection.ones();
    scatter = k == 0 ? noise[0] : scatter;
    strange[k] = strange(f.kind, least - before, noise[k], idle, k);
  }

  /** What every fit under a kind of noise shares: its prior and the determinants. */
  double fixed(int k, KindFilter f, Projection p, Idle idle) {
    double determinants = f.logs + idle.logs(k) + p.logDeterminant();
    return Math.log(f.kind.prior()) + f.kind.logWeak(scatter, dof) - 0.5 * determinants;
  }

  /** Likelihood with the variance at its best value, not below what rounding makes. */
  double log(double squares) {
    double v = variance(squares);
    return -0.5 * dof * Math.log(v) - squares / (2 * v);
  }

  /** Variance of a block from a sum of squares. */
  double variance(double squares) {
    return Math.max(squares / dof, floor);
  }

  private boolean strange(Kind kind, double squares, double variance, Idle idle, int k) {
    double known = idle.dof();
    if (known > 0) {
      double here = squares / Math.max(1, dof - known);
      return here > STRANGE * (1 + 8 / known) * idle.squares(k) / known;
    }
    double most = UNSEEN * Math.max(bend, 1 / 12.0 / perBlock);
    return variance > (kind.share() < 0.5 ? most : 4 * most);
  }

  /** From the variance of a block, left in {@code noise}, to what follows from it. */
  private void noise(int k, double driftVariance) {
    double block = noise[k];
    blockVariance[k] = block;
    double seen = Math.sqrt(Math.max(0.01, bank.within() + block - 1.0 / 12));
    noise[k] = Math.min(mostNoise, seen);
    double dither = Math.exp(-2 * Math.PI * Math.PI * noise[k] * noise[k]);
    double rounding = dither * dither / 6;
    roundingBias[k] = dither / Math.PI;
    driftError[k] = Math.sqrt(block * driftVariance + rounding);
  }
}
