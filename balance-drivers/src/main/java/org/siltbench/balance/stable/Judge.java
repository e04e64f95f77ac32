package org.siltbench.balance.stable;

import java.util.List;

/**
 * Weighs the ways a display may still be moving against flat, and says how likely the value it
 * shows is off the truth by more than the tolerance. Bayesian model averaging over least-squares
 * fits; docs/stability.md gives the reasoning and the sources.
 */
final class Judge {

  private static final int MOST_POINTS = 48;
  private static final double DETECTABLE_SIGMAS = 3;
  private static final double PRIOR_WIDTH = 8;
  private static final double STATISTICAL = 1.9;
  private static final double GRID = 0.15;
  private static final double MOST_GRACE = 2.4;
  private static final double WATCH_S = 15;

  private static final List<Shape> SHAPES =
      List.of(
          new Shape.Decay(2.5, 0.04),
          new Shape.Decay(6, 0.04),
          new Shape.Decay(12, 0.04),
          new Shape.Decay(22, 0.04),
          new Shape.Decay(35, 0.04),
          new Shape.Decay(55, 0.04),
          new Shape.Decay(85, 0.04),
          new Shape.Decay(130, 0.04),
          new Shape.Decay(190, 0.04),
          new Shape.Decay(300, 0.02),
          new Shape.Creep(5, 1.5, 0.1),
          new Shape.Uptake(0.1));

  private final double[] t = new double[MOST_POINTS * 2];
  private final double[] x = new double[MOST_POINTS * 2];
  private final double[] w = new double[MOST_POINTS * 2];
  private final double[] g = new double[MOST_POINTS * 2];
  private final double[] residual = new double[MOST_POINTS * 2];
  private final Noise noise = new Noise();
  private final Fit[] fits = new Fit[SHAPES.size()];
  private int n;
  private Shape.Moments moments = new Shape.Moments(0, 0, 0);
  private double perPoint;

  /** A weighted straight fit x = truth + left·g. */
  record Fit(double truth, double left, double gMean, double gSquares, double rss) {}

  /**
   * What the judge thinks.
   *
   * @param recorded the whole division nearest to the mean of the accepted stretch
   * @param mean mean of the accepted stretch, divisions
   * @param from when the accepted stretch begins, s
   * @param meanError standard error of that mean
   * @param slope least-squares slope over the whole stretch, divisions a second
   * @param slopeError its standard error
   * @param wrong probability that {@code recorded} is off by more than the tolerance
   * @param moving posterior weight of all shapes but rest
   * @param uptake posterior weight of moisture
   * @param reading standard deviation of single readings, divisions
   * @param tolerance the tolerance it reckoned with, divisions
   */
  record Opinion(
      double recorded,
      double mean,
      double from,
      double meanError,
      double slope,
      double slopeError,
      double wrong,
      double moving,
      double uptake,
      double reading,
      double tolerance) {}

  /**
   * Judges blocks {@code from} to the newest.
   *
   * @param tolerance the method's tolerance, divisions
   */
  Opinion judge(Blocks blocks, int from, Shape.Moments moments, double tolerance) {
    gather(blocks, from);
    this.moments = moments;
    Fit flat = flatFit();
    double least = fitAll(flat);
    noise.weigh(residual, n, blocks.neighbourVariance(from), blocks.changes(from), perPoint);
    double allowed = Math.max(tolerance, Math.max(1, STATISTICAL * noise.reading()));
    Opinion best = weigh(0, allowed, least, flat);
    for (int a = n / 2; n - a >= 5; a += (n - a) / 2) {
      if (Math.rint(mean(a)) != best.recorded) {
        Opinion other = weigh(a, allowed, least, flat);
        best = other.wrong < best.wrong ? other : best;
      }
    }
    return best;
  }

  private void gather(Blocks blocks, int from) {
    int size = blocks.size() - from;
    int stride = 1 + (size - 1) / MOST_POINTS;
    n = 0;
    double total = 0;
    for (int i = from; i + stride <= blocks.size(); i += stride) {
      double weight = 0;
      double time = 0;
      double value = 0;
      for (int k = i; k < i + stride; k++) {
        weight += blocks.count(k);
        time += blocks.count(k) * blocks.time(k);
        value += blocks.count(k) * blocks.value(k);
      }
      t[n] = time / weight;
      x[n] = value / weight;
      w[n] = weight;
      total += weight;
      n++;
    }
    perPoint = total / n;
    for (int i = 0; i < n; i++) {
      w[i] /= perPoint;
    }
  }

  private Fit flatFit() {
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += w[i] * x[i];
    }
    double mean = sum / n;
    double rss = 0;
    for (int i = 0; i < n; i++) {
      rss += w[i] * (x[i] - mean) * (x[i] - mean);
    }
    return new Fit(mean, 0, 0, 0, rss);
  }

  /** Fits every shape; the least sum of squares, with its residuals left in {@code residual}. */
  private double fitAll(Fit flat) {
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < fits.length; s++) {
      for (int i = 0; i < n; i++) {
        g[i] = SHAPES.get(s).at(t[i], moments);
      }
      fits[s] = fit(flat);
      if (fits[s].rss < least) {
        least = fits[s].rss;
        for (int i = 0; i < n; i++) {
          residual[i] = x[i] - fits[s].truth - fits[s].left * g[i];
        }
      }
    }
    return least;
  }

  private Fit fit(Fit flat) {
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += w[i] * g[i];
    }
    double mean = sum / n;
    double squares = 0;
    double cross = 0;
    for (int i = 0; i < n; i++) {
      squares += w[i] * (g[i] - mean) * (g[i] - mean);
      cross += w[i] * (g[i] - mean) * (x[i] - flat.truth);
    }
    double left = cross / squares;
    return new Fit(
        flat.truth - left * mean, left, mean, squares, Math.max(0, flat.rss - left * cross));
  }

  private Opinion weigh(int a, double allowed, double least, Fit flat) {
    double mean = mean(a);
    double recorded = Math.rint(mean);
    Odds odds = new Odds();
    for (int k = 0; k < noise.kinds(); k++) {
      if (noise.weight(k) > 0) {
        weigh(odds, noise.weight(k), noise.variance(k), recorded, allowed, least, flat);
      }
    }
    double v = noise.variance();
    double[] line = slope(flat);
    return new Opinion(
        recorded,
        mean,
        t[a],
        Math.sqrt(v / (n - a)),
        line[0],
        Math.sqrt(v / line[1]),
        odds.bad / odds.total,
        odds.moving / odds.total,
        odds.uptake / odds.total,
        noise.reading(),
        allowed);
  }

  private void weigh(
      Odds odds, double share, double v, double recorded, double allowed, double least, Fit flat) {
    double rest = share * Math.exp(-(flat.rss - least) / (2 * v));
    odds.total += rest;
    odds.bad += rest * tails(recorded - flat.truth, Math.sqrt(v / n), allowed);
    double soon = Math.min(MOST_GRACE, Math.pow((t[n - 1] - t[0]) / WATCH_S, 1.5));
    for (int s = 0; s < fits.length; s++) {
      Fit fit = fits[s];
      double se = Math.sqrt(v / fit.gSquares);
      double occam = Math.min(1, 2.5 * se / (PRIOR_WIDTH * allowed));
      double weight =
          share
              * SHAPES.get(s).prior(fit.left, moments)
              * occam
              * Math.exp(-(fit.rss - least) / (2 * v));
      double grid = GRID * fit.left;
      double leftVariance = se * se + grid * grid;
      double truthError = Math.sqrt(v / n + fit.gMean * fit.gMean * leftVariance);
      double limit = Math.max(allowed, DETECTABLE_SIGMAS * se * soon);
      odds.total += weight;
      odds.moving += weight;
      odds.bad += weight * tails(recorded - fit.truth, truthError, limit);
      odds.uptake += SHAPES.get(s) instanceof Shape.Uptake ? weight : 0;
    }
  }

  /** Sums over kinds of noise and shapes. */
  private static final class Odds {
    private double total;
    private double bad;
    private double moving;
    private double uptake;
  }

  private double mean(int a) {
    double sum = 0;
    double weights = 0;
    for (int i = a; i < n; i++) {
      sum += w[i] * x[i];
      weights += w[i];
    }
    return sum / weights;
  }

  private double[] slope(Fit flat) {
    for (int i = 0; i < n; i++) {
      g[i] = t[i] - t[0];
    }
    Fit line = fit(flat);
    return new double[] {line.left, line.gSquares};
  }

  private static double tails(double error, double se, double allowed) {
    double s = Math.max(se, 1e-6);
    return NormalTail.above((allowed - error) / s) + NormalTail.above((allowed + error) / s);
  }
}
