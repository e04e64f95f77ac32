package org.siltbench.balance.stable;

/**
 * Sums over kinds of noise and courses how likely one value is off the truth by more than the
 * tolerance: prior x likelihood x the width the readings leave to a course's size.
 */
final class Odds {

  private static final double STATISTICAL = 1.95;
  private static final double STATISTICAL_SLOW = 1.85;
  private static final double DETECTABLE = 2.6;
  private static final double DETECTABLE_SWINGING = 1.5;
  private static final double LATEST_S = 120;
  private static final double WATCH_S = 15;
  private static final double NOTHING = -17;

  /** The logarithm of the largest error over the smallest. */
  static final double LOG_RANGE = 3.8;

  private static final double MOISTURE = 0.33;
  private static final double LINE_SHARE = 0.25;
  private static final double CREEPING = 0.33;
  private static final double USUAL_CREEP = 0.9;
  private static final double MOST_CREEP = 1.5;
  private static final int CREEP_STEPS = 24;
  private static final double MARGIN = 0.96;
  private static final double SMALLEST = 2;

  /** Weights of errors within the tolerance that noise may carry over it. */
  private static final double CREPT = 0.003;

  private static final double BENIGN = 0.02;
  private static final double BENIGN_LEAST = 0.25;
  private static final int BENIGN_STEPS = 5;
  private static final double SURE = 9;

  /** Variance that a wandering zero gains in a second, divisions squared. */
  private static final double WANDER = 1.4e-4;

  /** Of the slope by least squares of a random walk, times the length of the watch. */
  private static final double WALK_SLOPE = 1.2;

  /** Square of the standard errors at which an exponential leads to the truth by being seen. */
  private static final double SEEN = 25;

  private final Frame frame;
  private final double recorded;
  private final double top;
  private double total;
  private double bad;
  private double doubt;
  private double uptake;

  // Of the hypothesis in hand.
  private Fits f;
  private int k;
  private int s;
  private double tolerance;
  private double likelihood;

  Odds(Frame frame, double recorded, Fits fits, double top) {
    this.frame = frame;
    this.recorded = recorded;
    this.top = top;
    this.f = fits;
  }

  double total() {
    return total;
  }

  /** Probability of a wrong value that a watch can tell from rest. */
  double wrong() {
    return bad / total;
  }

  double doubtful() {
    return doubt / total;
  }

  double uptake() {
    return uptake / total;
  }

  /** What weighed in since the total stood there cannot be believed. */
  void mistrust(double before) {
    bad += total - before;
  }

  void rest(Fits fits, int kind) {
    f = fits;
    k = kind;
    tolerance();
    double w = Math.exp(f.logRest[k] - top);
    double off = Math.abs(recorded - f.level[k]) + f.roundingBias[k];
    double se = Math.sqrt(f.restVariance[k] + wandered());
    double p = w * (above((tolerance - off) / se) + above((tolerance + off) / se));
    total += w;
    bad += p;
    doubt += p;
  }

  private void tolerance() {
    double times = Kind.ALL.get(k).wanders() ? STATISTICAL_SLOW : STATISTICAL;
    tolerance = Math.max(MARGIN * frame.tolerance(), Math.max(1, times * f.noise[k]));
  }

  /** What the zero may have wandered since the load came, divisions squared. */
  double wandered() {
    return WANDER * f.bank.now();
  }

  /**
   * The same for a truth that an exponential leads to: a zero that wanders bends its course, and
   * the slope of a random walk in a watch of W seconds has the variance 6/5 of the walk's over W.
   */
  double wandered(double tau) {
    double watch = f.bank.now() - f.bank.begin();
    return wandered() + WALK_SLOPE * WANDER * tau * tau / watch;
  }

  void shape(Fits fits, int kind, int index) {
    f = fits;
    k = kind;
    s = index;
    if (f.logShape[k][s] - top < NOTHING) {
      return;
    }
    tolerance();
    likelihood = Kind.ALL.get(k).drifting() * Math.exp(f.logShape[k][s] - top);
    Shape shape = f.shapes.get(s);
    if (shape instanceof Shape.Decay decay) {
      decay(decay);
      moisture(decay);
    } else if (shape instanceof Shape.Creep) {
      creep();
    } else {
      line();
    }
  }

  double tolerance(int kind) {
    k = kind;
    tolerance();
    return tolerance;
  }

  /** The least drift over 15 s that a watch can tell from none. */
  double detectable(int kind) {
    k = kind;
    return detectable();
  }

  /** The least error of an exponential that is waited for. */
  double limit(Shape.Decay decay, double detectable) {
    double drift = decay.growth(WATCH_S);
    double later = 1 + decay.growth(Math.max(0, LATEST_S - f.bank.now()));
    boolean hidden = tolerance * drift < detectable;
    return hidden ? Math.max(tolerance, detectable / drift * later) : tolerance;
  }

  double recorded() {
    return recorded;
  }

  double top() {
    return top;
  }

  private double detectable() {
    boolean swings = Kind.ALL.get(k).hertz() > 0;
    return (swings ? DETECTABLE_SWINGING : DETECTABLE) * f.driftError[k];
  }

  private void decay(Shape.Decay decay) {
    double limit = limit(decay, detectable());
    double before = 1 + decay.growth(f.bank.now());
    if (decay.rising() == 0) {
      return;
    }
    Course course =
        new Course(
            f.now[s], 0, limit, Double.POSITIVE_INFINITY, SMALLEST / before, tolerance / before);
    weigh(course, decay.sinking(), decay.rising());
  }

  private void moisture(Shape.Decay decay) {
    if (decay.moist() > 0) {
      double[] outs = frame.outs(f.bank.now());
      for (double out : outs) {
        double dry = decay.at(out, f.bank.begin());
        double later = decay.at(LATEST_S, f.bank.begin()) - dry;
        double part = f.now[s] - dry;
        moisture(part, -dry, out, part / later, decay.moist() / outs.length);
      }
    }
  }

  private void line() {
    double[] outs = frame.outs(f.bank.now());
    for (double out : outs) {
      double part = f.bank.now() - out;
      moisture(part, f.bank.begin() - out, out, part / (LATEST_S - out), LINE_SHARE / outs.length);
    }
  }

  private void moisture(double part, double shift, double out, double ofLatest, double share) {
    double span = f.bank.now() - out;
    double limit = Math.max(tolerance, detectable() / WATCH_S * span);
    double harmless = tolerance * Math.min(1, ofLatest);
    Course course = new Course(part, shift, limit, frame.mostUptake(span), 0, harmless);
    uptake += weigh(course, MOISTURE * share, 0);
  }

  /** Creep has a usual size, so its prior and its fit are joined. */
  private void creep() {
    double prior = USUAL_CREEP * USUAL_CREEP;
    double seen = f.leftVariance[k][s];
    double variance = prior * seen / (prior + seen);
    double a = f.left[k][s] * variance / seen;
    double far = f.left[k][s] * f.left[k][s] / (prior + seen);
    double w = CREEPING * Math.sqrt(variance / prior) * likelihood * Math.exp(-far / 2);
    double m = f.meanShape[k][s];
    double off = recorded - f.level[k] + a * m;
    double se = Math.sqrt(f.levelVariance[k] + m * m * variance);
    total += w;
    doubt += w * (above((tolerance - off) / se) + above((tolerance + off) / se));
    bad += CREPT * w * crept(a, Math.sqrt(variance));
  }

  /**
   * A creep is never seen for what it is. One that leaves the display right as long as anybody
   * looks may, like any error within the tolerance, carry a mean over it that noise has shifted.
   */
  private double crept(double a, double sd) {
    double se = Math.sqrt(f.levelVariance[k]);
    double last = f.shapes.get(s).at(Math.max(LATEST_S, f.bank.now()), 0);
    double width = 2 * MOST_CREEP / CREEP_STEPS;
    double sum = 0;
    for (int i = 0; i < CREEP_STEPS; i++) {
      double size = (i + 0.5) * width - MOST_CREEP;
      double off = Math.abs(recorded - f.level[k] + size * f.meanShape[k][s]);
      double wrong = Math.max(tolerance, Math.abs(size) * last + 0.5);
      double z = (size - a) / sd;
      sum += Math.abs(z) > SURE ? 0 : Math.exp(-z * z / 2) * above((wrong - off) / se);
    }
    return sum * width / sd / Math.sqrt(2 * Math.PI);
  }

  /**
   * How a shape's coefficient makes an error.
   *
   * @param part the error now for a coefficient of one
   * @param shift what must be added to the shape so that it is zero at the truth
   * @param limit errors below this are not waited for
   * @param most errors above this do not happen
   * @param least errors below this do not happen either
   * @param harmless errors up to this were never wrong where they could not be told
   */
  private record Course(
      double part, double shift, double limit, double most, double least, double harmless) {}

  /** Adds one course with its prior weights for errors above and below the truth. */
  private double weigh(Course c, double above, double below) {
    double a = f.left[k][s];
    double variance = f.leftVariance[k][s];
    double m = f.meanShape[k][s] + c.shift;
    double off = recorded - f.level[k] + a * m;
    boolean led = a * a > SEEN * variance && f.shapes.get(s) instanceof Shape.Decay;
    double bent = led ? wandered(((Shape.Decay) f.shapes.get(s)).tau()) : wandered();
    double se = Math.sqrt(f.levelVariance[k] + m * m * variance + bent);
    double seNow = Math.sqrt(variance) * Math.abs(c.part);
    double seen = a * c.part;
    double size = Math.abs(seen);
    double width = Math.sqrt(2 * Math.PI) * seNow / LOG_RANGE;
    double here = Math.max(size, Math.max(0.5, 0.3 * tolerance));
    double w = likelihood * (seen > 0 ? above : below) * Math.min(1, width / here);
    w = size > c.most ? w * above((size - c.most) / seNow) : w;
    total += w;
    double p = beyond(off, se, c.limit, c.most, above, below);
    bad += p * likelihood * Math.min(1, width / Math.max(c.limit, 0.7 * size));
    if (c.limit > tolerance) {
      p = beyond(off, se, tolerance, c.most, above, below);
      bad += BENIGN * likelihood * benign(c, seen, seNow, m / c.part, above, below);
    }
    doubt += p * likelihood * Math.min(1, width / Math.max(tolerance, 0.7 * size));
    return w;
  }

  private double beyond(
      double off, double se, double limit, double most, double above, double below) {
    if (limit > most) {
      return 0;
    }
    double up = above == 0 ? 0 : above * above((limit - off) / se);
    return below == 0 ? up : up + below * above((limit + off) / se);
  }

  /**
   * An error that no watch can tell and that lies within the tolerance does no harm by itself, but
   * may carry a mean over it that noise has shifted.
   */
  private double benign(
      Course c, double seen, double seNow, double lag, double above, double below) {
    double se = Math.sqrt(f.levelVariance[k] + wandered());
    double least = Math.max(c.least, BENIGN_LEAST * tolerance);
    if (c.harmless <= least || tolerance - c.harmless - 0.5 >= SURE * se) {
      return 0;
    }
    double step = Math.log(c.harmless / least) / BENIGN_STEPS;
    double sum = 0;
    for (int i = 0; i < BENIGN_STEPS; i++) {
      double e = least * Math.exp((i + 0.5) * step);
      if (tolerance - e - 0.5 < SURE * se) {
        sum += above == 0 ? 0 : above * shifted(e, seen, seNow, lag, se);
        sum += below == 0 ? 0 : below * shifted(-e, seen, seNow, lag, se);
      }
    }
    return sum * step / LOG_RANGE;
  }

  private double shifted(double e, double seen, double seNow, double lag, double se) {
    double z = (e - seen) / seNow;
    if (Math.abs(z) > SURE) {
      return 0;
    }
    double off = recorded - f.level[k] + e * lag;
    return Math.exp(-z * z / 2) * above((tolerance - Math.signum(e) * off) / se);
  }

  private double above(double x) {
    return StudentTail.above(x, f.dof);
  }
}
