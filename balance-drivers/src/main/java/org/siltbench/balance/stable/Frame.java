package org.siltbench.balance.stable;

/**
 * What is known of a watch beside its readings.
 *
 * @param tolerance the method's, divisions
 * @param divisionMg a division, mg
 * @param out when the filter left the desiccator, s since the load; not a number if nobody told
 */
record Frame(double tolerance, double divisionMg, double out) {

  private static final double LONGEST_S = 180;
  private static final double FASTEST_MG_PER_MIN = 1.3;

  /**
   * The moments at which the filter may have left the desiccator; where nobody told, a load that
   * has lain for long is reckoned with as if it came three minutes ago.
   */
  double[] outs(double now) {
    if (!Double.isNaN(out)) {
      return new double[] {out};
    }
    double load = Math.max(0, now - LONGEST_S);
    return new double[] {load - 5, load - 15, load - 28};
  }

  /** More than a filter takes up in so many seconds, divisions. */
  double mostUptake(double seconds) {
    return FASTEST_MG_PER_MIN / 60 / divisionMg * seconds;
  }
}
