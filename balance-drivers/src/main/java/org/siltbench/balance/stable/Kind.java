package org.siltbench.balance.stable;

import java.util.ArrayList;
import java.util.List;

/**
 * A kind of noise, of unit variance block by block: white, white with a draught of some memory (an
 * Ornstein-Uhlenbeck process), or white with a swing of some frequency (a vibration).
 *
 * @param share the part that is not white
 * @param memory seconds after which the slow part has forgotten itself to 1/e
 * @param hertz frequency of a swing, or zero
 * @param prior its weight before any reading is seen
 */
record Kind(double share, double memory, double hertz, double prior) {

  private static final double WATCH_S = 15;
  private static final double BRIEF_S = 0.5;
  private static final double WEAK_DRAUGHT = 0.2;
  private static final double WEAK_SWING = 0.09;
  private static final double BLOCK_S = 0.5;
  private static final double DRIFTING_DISTURBED = 0.45;
  private static final double DRIFTING_CALM = 1.48;
  private static final double AVERAGED_S = 0.6;
  private static final double[] MEMORY_S = {0.35, 0.8, 1.6, 3};
  private static final double[] SHARE = {0.4, 0.75, 0.96};
  private static final double[] HERTZ = {0.3, 0.4, 0.55, 0.75, 1.0};
  private static final double SWING_SHARE = 0.9;
  private static final double SWING_MEMORY_S = 12;
  private static final double WHITE_PRIOR = 0.5;
  private static final double DRAUGHT_PRIOR = 0.35;

  static final List<Kind> ALL = all();

  private static List<Kind> all() {
    List<Kind> all = new ArrayList<>();
    all.add(new Kind(0, 1, 0, WHITE_PRIOR));
    double draught = DRAUGHT_PRIOR / (MEMORY_S.length * SHARE.length);
    for (double memory : MEMORY_S) {
      for (double share : SHARE) {
        all.add(new Kind(share, memory, 0, draught));
      }
    }
    double swing = (1 - WHITE_PRIOR - DRAUGHT_PRIOR) / HERTZ.length;
    for (double hertz : HERTZ) {
      all.add(new Kind(SWING_SHARE, SWING_MEMORY_S, hertz, swing));
    }
    return List.copyOf(all);
  }

  /** True for a draught: what a few seconds show of it is not all. */
  boolean wanders() {
    return hertz == 0 && share > 0 && memory > BRIEF_S;
  }

  /**
   * Logarithm of how much less likely a draught or a swing is where blocks scatter, about the
   * course that suits them best, less than the weakest would make them. What moves so little is
   * rounding, and neither wanders nor swings.
   */
  double logWeak(double scatter, double dof) {
    double weakest = weakest();
    return scatter >= weakest ? 0 : 0.5 * dof * Math.log(scatter / weakest);
  }

  /** Variance of blocks under a draught of a division, or a swing of half a one, once averaged. */
  private double weakest() {
    if (hertz == 0) {
      return wanders() ? WEAK_DRAUGHT : 0;
    }
    double kept = sinc(BLOCK_S * hertz) * sinc(AVERAGED_S * hertz);
    return WEAK_SWING * kept * kept;
  }

  private static double sinc(double x) {
    return Math.sin(Math.PI * x) / (Math.PI * x);
  }

  /**
   * How much likelier a drift is beside this noise than on the whole: 15 in a hundred of what
   * drifts, but all of what does not drift and is not calm, has a draught or a vibration too.
   */
  double drifting() {
    return hertz > 0 || wanders() ? DRIFTING_DISTURBED : DRIFTING_CALM;
  }

  /** Correlation of the slow part over a time, s. */
  double correlation(double seconds) {
    return Math.exp(-seconds / memory) * Math.cos(2 * Math.PI * hertz * seconds);
  }

  /**
   * Variance of the drift over 15 s by ordinary least squares, for blocks of unit variance so many
   * seconds apart.
   */
  double driftVariance(double spacing) {
    int n = Math.max(3, (int) Math.round(WATCH_S / spacing));
    double squares = lagged(n, 0);
    double sum = squares;
    for (int lag = 1; share > 0 && lag < n; lag++) {
      sum += 2 * share * lagged(n, lag) * correlation(lag * spacing);
    }
    return sum / (squares * squares) * n * n;
  }

  /** Sum of products of the centred places 1 to n, so far apart. */
  private static double lagged(int n, int lag) {
    double middle = (n - 1) / 2.0;
    double sum = 0;
    for (int i = 0; i + lag < n; i++) {
      sum += (i - middle) * (i + lag - middle);
    }
    return sum;
  }
}
