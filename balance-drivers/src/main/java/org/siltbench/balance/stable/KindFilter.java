package org.siltbench.balance.stable;

import java.util.Arrays;

/**
 * Takes one kind of noise out of a series of blocks, and out of every shape along with it, so that
 * what is left is white and least squares are right: the innovations of a Kalman filter. Keeps the
 * sums that any fit of rest, a settling tail and one shape asks for.
 */
final class KindFilter {

  /** Columns before the shapes: 1, the value, two tails. */
  static final int FIXED = 4;

  final Kind kind;
  private final int shapes;
  private final double[] first;
  private final double[] second;
  private final double[] white;
  private double p11;
  private double p12;
  private double p22;

  /** Sum of log innovation variances. */
  double logs;

  int n;

  /** Products of the fixed columns. */
  final double[][] fixed = new double[FIXED][FIXED];

  /** Products of each fixed column with each shape, and of each shape with itself. */
  final double[][] mixed;

  final double[] squares;

  /** Products of each shape with its partner, where it has one. */
  final double[] paired;

  private final int[] partner;

  KindFilter(Kind kind, int shapes) {
    this(kind, shapes, new int[0]);
  }

  /** A filter that also keeps the product of each of the first shapes with its partner. */
  KindFilter(Kind kind, int shapes, int[] partner) {
    this.kind = kind;
    this.shapes = shapes;
    this.partner = partner;
    paired = new double[partner.length];
    first = new double[shapes + FIXED];
    second = new double[shapes + FIXED];
    white = new double[shapes + FIXED];
    mixed = new double[FIXED][shapes];
    squares = new double[shapes];
    clear();
  }

  void clear() {
    Arrays.fill(first, 0);
    Arrays.fill(second, 0);
    Arrays.fill(squares, 0);
    Arrays.fill(paired, 0);
    for (int i = 0; i < FIXED; i++) {
      Arrays.fill(fixed[i], 0);
      Arrays.fill(mixed[i], 0);
    }
    p11 = kind.share();
    p12 = 0;
    p22 = kind.share();
    logs = 0;
    n = 0;
  }

  /**
   * Takes a block.
   *
   * @param column 1, the value, two tails, then each shape
   * @param sinceLast seconds since the block before
   * @param coarse how much larger the white variance of this block is than of the usual one
   */
  void add(double[] column, double sinceLast, double coarse) {
    boolean slow = kind.share() > 0;
    if (slow && n > 0) {
      predict(sinceLast);
    }
    double variance = (1 - kind.share()) * coarse + p11;
    whiten(column, 1 / Math.sqrt(variance), p11 / variance, p12 / variance);
    p22 -= p12 / variance * p12;
    p12 -= p11 / variance * p12;
    p11 -= p11 / variance * p11;
    logs += Math.log(variance);
    n++;
    sum();
  }

  private void whiten(double[] column, double root, double gain, double otherGain) {
    boolean swings = kind.hertz() > 0;
    for (int c = 0; c < white.length; c++) {
      double innovation = column[c] - first[c];
      white[c] = innovation * root;
      first[c] += gain * innovation;
      if (swings) {
        second[c] += otherGain * innovation;
      }
    }
  }

  private void predict(double dt) {
    double keep = Math.exp(-dt / kind.memory());
    if (kind.hertz() == 0) {
      for (int c = 0; c < first.length; c++) {
        first[c] *= keep;
      }
      p11 = keep * keep * p11 + kind.share() * (1 - keep * keep);
    } else {
      double angle = 2 * Math.PI * kind.hertz() * dt;
      swing(keep, Math.cos(angle), Math.sin(angle));
    }
  }

  private void swing(double keep, double cos, double sin) {
    for (int c = 0; c < first.length; c++) {
      double u = first[c];
      first[c] = keep * (cos * u - sin * second[c]);
      second[c] = keep * (sin * u + cos * second[c]);
    }
    double fresh = kind.share() * (1 - keep * keep);
    double q11 = cos * cos * p11 - 2 * sin * cos * p12 + sin * sin * p22;
    double q12 = sin * cos * (p11 - p22) + (cos * cos - sin * sin) * p12;
    double q22 = sin * sin * p11 + 2 * sin * cos * p12 + cos * cos * p22;
    p11 = keep * keep * q11 + fresh;
    p12 = keep * keep * q12;
    p22 = keep * keep * q22 + fresh;
  }

  private void sum() {
    for (int i = 0; i < FIXED; i++) {
      for (int j = i; j < FIXED; j++) {
        fixed[i][j] += white[i] * white[j];
      }
    }
    sumShapes();
    for (int s = 0; s < partner.length; s++) {
      paired[s] += white[s + FIXED] * white[partner[s] + FIXED];
    }
  }

  /** One pass for all: the innermost loop there is. */
  private void sumShapes() {
    double one = white[0];
    double value = white[1];
    double tail = white[2];
    double second = white[3];
    double[] ones = mixed[0];
    double[] values = mixed[1];
    double[] tails = mixed[2];
    double[] seconds = mixed[3];
    for (int s = 0; s < shapes; s++) {
      double w = white[s + FIXED];
      ones[s] += one * w;
      values[s] += value * w;
      tails[s] += tail * w;
      seconds[s] += second * w;
      squares[s] += w * w;
    }
  }
}
