package org.siltbench.demo.bench.stability;

/** What only the simulator can know: when the display is right, and whether anyone could tell. */
final class Truths {

  private static final double STAYS_S = 20;
  private static final double WATCH_S = 15;
  private static final double STEP_S = 1;
  private static final double SIGMAS = 3;
  private static final double SETTLED = 0.1;
  private static final double SETTLED_S = 2;

  private final Placement p;
  private final double[] time;
  private final double[] carrier;
  private final double[] lag;
  private final double truth;
  private final double tolerance;
  private final int touch;
  private final double sigma;

  Truths(
      Placement p,
      double[] time,
      double[] carrier,
      double[] lag,
      double truth,
      double tolerance,
      int touch,
      double sigma) {
    this.p = p;
    this.time = time;
    this.carrier = carrier;
    this.lag = lag;
    this.truth = truth;
    this.tolerance = tolerance;
    this.touch = touch;
    this.sigma = sigma;
  }

  /** First moment after which the carrier stays within the tolerance for 20 s; infinite if none. */
  double oracle() {
    int since = -1;
    for (int i = touch; i < time.length; i++) {
      boolean within = Math.abs(carrier[i] - truth) <= tolerance;
      since = within ? (since < 0 ? i : since) : -1;
      if (since >= 0 && time[i] - time[since] >= STAYS_S) {
        return time[since];
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Whether a watch of 15 s can tell the display from rest while it is wrong. Looks at every second
   * up to 120 s at which the display shows a wrong value, and asks whether the drift in the 15 s up
   * to then (the first 15 s after settling, where there are none before) is under 3 standard errors
   * of its least-squares estimate from those readings.
   */
  Hidden hidden() {
    int settled = settled();
    double until = Stream.LATEST_ORACLE_S;
    double next = time[settled];
    boolean first = false;
    boolean ever = false;
    boolean known = false;
    for (int at = settled; at < time.length && time[at] < until && !(ever && known); at++) {
      boolean look = time[at] >= next && Math.abs(Math.rint(carrier[at]) - truth) > tolerance;
      next = time[at] >= next ? time[at] + STEP_S : next;
      boolean early = time[at] < time[settled] + WATCH_S;
      if (look && !(early && known)) {
        boolean hides = hides(early ? time[settled] : time[at] - WATCH_S);
        ever |= hides;
        first |= early && hides;
        known |= early;
      }
    }
    return new Hidden(ever, first);
  }

  /**
   * @param sometimes at some moment while the display is wrong
   * @param fromTheStart in the first watch already
   */
  record Hidden(boolean sometimes, boolean fromTheStart) {}

  private boolean hides(double begin) {
    int from = touch;
    while (time[from] < begin) {
      from++;
    }
    int to = from;
    while (to < time.length && time[to] < begin + WATCH_S) {
      to++;
    }
    return Math.abs(drift(from, to)) < SIGMAS * driftError(from, to);
  }

  /** First reading from which the lag of the balance stays small for a while. */
  private int settled() {
    int since = -1;
    for (int i = touch; i < time.length; i++) {
      boolean small = Math.abs(lag[i]) <= SETTLED * tolerance + SETTLED;
      since = small ? (since < 0 ? i : since) : -1;
      if (since >= 0 && time[i] - time[since] >= SETTLED_S) {
        return since;
      }
    }
    return time.length - 2;
  }

  private double middle(int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += time[i];
    }
    return sum / (to - from);
  }

  private double drift(int from, int to) {
    double middle = middle(from, to);
    double squares = 0;
    double cross = 0;
    for (int i = from; i < to; i++) {
      squares += (time[i] - middle) * (time[i] - middle);
      cross += (time[i] - middle) * (carrier[i] - truth);
    }
    return cross / squares * WATCH_S;
  }

  /** From the true covariance of noise, draught and vibration; rounding counts as white noise. */
  private double driftError(int from, int to) {
    double middle = middle(from, to);
    double squares = 0;
    double sin = 0;
    double cos = 0;
    for (int i = from; i < to; i++) {
      double c = time[i] - middle;
      squares += c * c;
      sin += c * Math.sin(2 * Math.PI * p.noise().hertz() * time[i]);
      cos += c * Math.cos(2 * Math.PI * p.noise().hertz() * time[i]);
    }
    double white = (p.noise().white() * p.noise().white() + 1.0 / 12) * squares;
    double sine = 0.5 * Math.pow(p.noise().vibration(), 2) * (sin * sin + cos * cos);
    double variance = white + sine + draught(from, to, middle);
    return Math.hypot(Math.sqrt(variance) / squares * WATCH_S, roundingError());
  }

  /**
   * Rounding hides a drift unless noise moves the last digit: the difference of two rounding
   * errors, less what noise of that size averages out (Widrow's condition for a Gaussian dither).
   */
  private double roundingError() {
    return Math.sqrt(1.0 / 6) * Math.exp(-2 * Math.PI * Math.PI * sigma * sigma);
  }

  private double draught(int from, int to, double middle) {
    double sd = p.noise().draught();
    if (sd == 0) {
      return 0;
    }
    // Two passes of a first-order recursion give sum_ij c_i c_j exp(-|t_i - t_j|/theta).
    double sum = 0;
    double carried = 0;
    for (int i = from; i < to; i++) {
      double c = time[i] - middle;
      double keep = i == from ? 0 : Math.exp(-(time[i] - time[i - 1]) / p.noise().draughtTime());
      carried = carried * keep;
      sum += c * c + 2 * c * carried;
      carried += c;
    }
    return sd * sd * sum;
  }
}
