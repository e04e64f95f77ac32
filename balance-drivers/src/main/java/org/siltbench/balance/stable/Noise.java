package org.siltbench.balance.stable;

import java.util.ArrayList;
import java.util.List;

/**
 * Weighs kinds of noise by how well they explain the residuals of a fit: white noise, and white
 * noise with a draught of some strength and memory (an Ornstein-Uhlenbeck process seen block by
 * block, whose likelihood a Kalman filter gives). Each kind says what variance of one block a fit
 * over many of them must reckon with.
 */
final class Noise {

  static final int MOST = 128;
  private static final double[] MEMORY_S = {0.3, 0.8, 1.6, 3};
  private static final double[] SLOW_SHARE = {0.35, 0.7, 0.95};
  private static final double WHITE_PRIOR = 0.5;
  private static final double NEGLIGIBLE = 1e-7;
  private static final double NEIGHBOUR_SHARE = 0.6;

  private final List<Kind> kinds = new ArrayList<>();
  private final double[] weight;
  private final double[] variance;
  private double reading;

  Noise() {
    kinds.add(new Kind(0, 0, WHITE_PRIOR));
    double prior = (1 - WHITE_PRIOR) / (MEMORY_S.length * SLOW_SHARE.length);
    for (double memory : MEMORY_S) {
      for (double share : SLOW_SHARE) {
        kinds.add(new Kind(share, Math.exp(-Blocks.SPAN_S / memory), prior));
      }
    }
    weight = new double[kinds.size()];
    variance = new double[kinds.size()];
  }

  /**
   * Weighs all kinds.
   *
   * @param residuals of the best fit, block by block
   * @param neighbour variance of one reading from neighbouring differences
   * @param changes how often the shown value changed: where it seldom does, rounding hides a drift
   * @param perBlock readings in a block
   */
  void weigh(double[] residuals, int n, double neighbour, double changes, double perBlock) {
    double white = neighbour / perBlock;
    double rounding = Math.min(n / 2.0, n / (changes + 1)) / 12;
    double best = Double.NEGATIVE_INFINITY;
    double spread = 1e-12;
    for (int i = 0; i < n; i++) {
      spread += residuals[i] * residuals[i];
    }
    spread /= Math.max(1, n - 2);
    for (int k = 0; k < weight.length; k++) {
      Kind kind = kinds.get(k);
      double q = Math.max(kind.squares(residuals, n), 1e-12);
      double v = Math.max(q / (n - 2), NEIGHBOUR_SHARE * white);
      boolean impossible = kind.share > 0 && (1 - kind.share) * v < NEIGHBOUR_SHARE * white;
      double log = Math.log(kind.prior) - 0.5 * (kind.logs[n] + n * Math.log(v) + q / v);
      weight[k] = impossible ? Double.NEGATIVE_INFINITY : log;
      variance[k] = Math.max(v * kind.longRun() * (1 + 2.0 / n), rounding);
      best = Math.max(best, weight[k]);
    }
    normalise(best);
    reading = Math.sqrt(Math.max(neighbour, neighbour * (1 - 1 / perBlock) + spread));
  }

  private void normalise(double best) {
    double sum = 0;
    for (int k = 0; k < weight.length; k++) {
      weight[k] = Math.exp(weight[k] - best);
      sum += weight[k];
    }
    for (int k = 0; k < weight.length; k++) {
      weight[k] = weight[k] / sum < NEGLIGIBLE ? 0 : weight[k] / sum;
    }
  }

  int kinds() {
    return weight.length;
  }

  /** Posterior weight of a kind. */
  double weight(int kind) {
    return weight[kind];
  }

  /** Effective variance of one block under a kind, divisions squared. */
  double variance(int kind) {
    return variance[kind];
  }

  /** Posterior mean of the effective variance of one block. */
  double variance() {
    double sum = 0;
    for (int k = 0; k < weight.length; k++) {
      sum += weight[k] * variance[k];
    }
    return sum;
  }

  /** Standard deviation of single readings, divisions. */
  double reading() {
    return reading;
  }

  /** One kind of noise, with the innovations of its filter worked out beforehand. */
  private static final class Kind {
    private final double share;
    private final double keep;
    private final double prior;
    private final double[] scale = new double[MOST];
    private final double[] gain = new double[MOST];
    private final double[] logs = new double[MOST + 1];

    Kind(double share, double keep, double prior) {
      this.share = share;
      this.keep = keep;
      this.prior = prior;
      double p = share;
      for (int i = 0; i < MOST; i++) {
        scale[i] = p + 1 - share;
        gain[i] = p / scale[i];
        logs[i + 1] = logs[i] + Math.log(scale[i]);
        p = keep * keep * (p - gain[i] * p) + share * (1 - keep * keep);
      }
    }

    /** Sum of squared standardised innovations, for noise of unit variance. */
    double squares(double[] residuals, int n) {
      double sum = 0;
      double expected = 0;
      for (int i = 0; i < n; i++) {
        double innovation = residuals[i] - expected;
        sum += innovation * innovation / scale[i];
        expected = keep * (expected + gain[i] * innovation);
      }
      return sum;
    }

    /** Long-run variance of a block mean over its variance. */
    double longRun() {
      return 1 - share + share * (1 + keep) / (1 - keep);
    }
  }
}
