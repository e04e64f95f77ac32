package org.siltbench.demo.bench.stability;

/**
 * Everything that was drawn for one placement. Masses in divisions of the balance, times in seconds
 * from the first touch of the pan.
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared; read in the innermost loop.
record Placement(
    Case kind,
    double divisionMg,
    double load,
    Response response,
    Placing placing,
    Noise noise,
    Slow slow,
    Output output,
    long noiseSeed) {

  /** What makes the placement hard. */
  enum Case {
    CALM,
    DRAUGHTY,
    VIBRATING,
    CREEPING,
    WARM,
    STATIC,
    MOISTURE
  }

  /** The balance follows its load with one lag or two. */
  record Response(double tau, boolean secondOrder) {}

  /** Wrong loads for a moment: touch and bounce, each with its time of beginning. */
  record Placing(double[] begins, double[] offsets, double placedAt) {}

  /** White noise, an Ornstein-Uhlenbeck draught with bursts, a sine. */
  record Noise(
      double white,
      double draught,
      double draughtTime,
      double[] burstAt,
      double burstFactor,
      double vibration,
      double hertz,
      double phase,
      double zeroWalk) {}

  /** What moves the carrier slowly. {@code out}: seconds out of the desiccator before the touch. */
  record Slow(
      double creep,
      double warm,
      double warmTau,
      double stat,
      double staticTau,
      double[] jumpAt,
      double[] jumps,
      double uptake,
      double uptakeTau,
      double out,
      boolean outTold) {

    /** True if anything but the zero moves slowly. */
    boolean moves() {
      return creep != 0 || warm != 0 || stat != 0 || uptake != 0;
    }

    /** What is added to the load, divisions, at a time after the touch. */
    double at(double t) {
      double sum = creep * Math.log1p(t / 5) - warm * Math.exp(-t / warmTau);
      double charge = stat;
      for (int i = 0; i < jumpAt.length; i++) {
        charge += t >= jumpAt[i] ? jumps[i] : 0;
      }
      sum += charge * Math.exp(-t / staticTau);
      return sum + uptake * (1 - Math.exp(-(t + out) / uptakeTau));
    }
  }

  /** How the balance sends: rate, jitter as part of the interval, averaging, its own mark. */
  record Output(
      int rate, double jitter, int averaged, boolean marks, double markSpan, double markSpread) {}
}
