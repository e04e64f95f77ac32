package org.siltbench.demo.bench.stability;

/**
 * One placement as it came out of the balance, with what only the simulator knows. Times in seconds
 * from the first touch; the stream begins with the empty pan. Masses in divisions.
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared; boxed lists would double the run time.
record Stream(
    Placement placement,
    double[] time,
    double[] carrier,
    long[] shown,
    boolean[] marked,
    double sigma,
    double truth,
    double tolerance,
    int touch,
    double oracle,
    Truths.Hidden hidden) {

  static final double LATEST_ORACLE_S = 120;

  /** True if refusing is right: the display comes to the truth too late or never. */
  boolean refusalRight() {
    return !(oracle <= LATEST_ORACLE_S);
  }

  /**
   * True if no watch of 15 s can tell the display from rest at some moment while a value read off
   * it may be wrong.
   */
  boolean undetectable() {
    return hidden.sometimes();
  }

  boolean wrong(double recorded) {
    return Math.abs(recorded - truth) > tolerance + 1e-9;
  }
}
