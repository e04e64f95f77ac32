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
   * Whether a watch of 15 s can tell the display from rest while a value read off it may be wrong.
   * Looks at every second up to 120 s at which the display shows a wrong value, or one so near the
   * tolerance that the noise of a watch may carry its mean over it, and asks whether the drift in
   * the 15 s up to then (the first 15 s after settling, where there are none before) is under 3
   * standard errors of its least-squares estimate from those readings.
   */
  Hidden hidden() {
    int settled = settled();
    double until = Stream.LATEST_ORACLE_S;
    double next = time[settled];
    Hidden seen = new Hidden(false, false, false);
    boolean known = false;
    for (int at = settled; at < time.length && time[at] < until; at++) {
      boolean look = time[at] >= next;
      next = look ? time[at] + STEP_S : next;
      boolean early = time[at] < time[settled] + WATCH_S;
      if (look && mayBeWrong(at, sigma) && !(early && known)) {
        seen = seen.or(look(early ? time[settled] : time[at] - WATCH_S, at, early));
        known |= early && off(carrier[at]) > tolerance;
      }
    }
    return seen;
  }

  /** How far the whole division nearest to a level is off. */
  private double off(double level) {
    return Math.abs(Math.rint(level) - truth);
  }

  /** Whether a value read off is wrong, or may be where the level is known to an error only. */
  private boolean mayBeWrong(int at, double error) {
    double room = p.slow().moves() ? SIGMAS * error : 0;
    return Math.max(off(carrier[at] - room), off(carrier[at] + room)) > tolerance;
  }

  private Hidden look(double begin, int at, boolean early) {
    int from = touch;
    while (time[from] < begin) {
      from++;
    }
    int to = from;
    while (to < time.length && time[to] < begin + WATCH_S) {
      to++;
    }
    boolean wrong = off(carrier[at]) > tolerance;
    boolean may = wrong || mayBeWrong(at, levelError(from, to));
    boolean hides = may && Math.abs(drift(from, to)) < SIGMAS * driftError(from, to);
    return new Hidden(hides, hides && wrong, hides && wrong && early);
  }

  /**
   * When a watch cannot tell the display from rest.
   *
   * @param sometimes at some moment at which a value read off it may be wrong
   * @param whileWrong at some moment at which the display itself is wrong
   * @param fromTheStart in the first watch already, the display being wrong
   */
  record Hidden(boolean sometimes, boolean whileWrong, boolean fromTheStart) {

    private Hidden or(Hidden other) {
      return new Hidden(
          sometimes || other.sometimes,
          whileWrong || other.whileWrong,
          fromTheStart || other.fromTheStart);
    }
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
    for (int i = from; i < to; i++) {
      squares += (time[i] - middle) * (time[i] - middle);
    }
    double error = Math.sqrt(variance(from, to, 1, middle)) / squares * WATCH_S;
    return Math.hypot(error, roundingError());
  }

  /** Standard error of the mean of some readings, from the same covariance. */
  private double levelError(int from, int to) {
    return Math.sqrt(variance(from, to, 0, 0)) / (to - from);
  }

  /** Variance of the sum of the noise of some readings, each weighed by (t - middle) to a power. */
  private double variance(int from, int to, int power, double middle) {
    double squares = 0;
    double sin = 0;
    double cos = 0;
    for (int i = from; i < to; i++) {
      double c = power == 0 ? 1 : time[i] - middle;
      squares += c * c;
      if (p.noise().vibration() > 0) {
        sin += c * Math.sin(2 * Math.PI * p.noise().hertz() * time[i]);
        cos += c * Math.cos(2 * Math.PI * p.noise().hertz() * time[i]);
      }
    }
    double white = (p.noise().white() * p.noise().white() + 1.0 / 12) * squares;
    double sine = 0.5 * Math.pow(p.noise().vibration(), 2) * (sin * sin + cos * cos);
    return white + sine + draught(from, to, power, middle);
  }

  /**
   * Rounding hides a drift unless noise moves the last digit: the difference of two rounding
   * errors, less what noise of that size averages out (Widrow's condition for a Gaussian dither).
   */
  private double roundingError() {
    return Math.sqrt(1.0 / 6) * Math.exp(-2 * Math.PI * Math.PI * sigma * sigma);
  }

  private double draught(int from, int to, int power, double middle) {
    double sd = p.noise().draught();
    if (sd == 0) {
      return 0;
    }
    // Two passes of a first-order recursion give sum_ij c_i c_j exp(-|t_i - t_j|/theta).
    double sum = 0;
    double carried = 0;
    for (int i = from; i < to; i++) {
      double c = power == 0 ? 1 : time[i] - middle;
      double keep = i == from ? 0 : Math.exp(-(time[i] - time[i - 1]) / p.noise().draughtTime());
      carried = carried * keep;
      sum += c * c + 2 * c * carried;
      carried += c;
    }
    return sd * sd * sum;
  }
}
