package org.siltbench.calc.control;

/** The four run rules of the Western Electric Statistical Quality Control Handbook (1956). */
public enum RunRule {
  /** One value beyond 3σ. */
  ONE_BEYOND_THREE_SIGMA(1, 1, 3),
  /** Two of three in a row beyond 2σ on the same side. */
  TWO_OF_THREE_BEYOND_TWO_SIGMA(2, 3, 2),
  /** Four of five in a row beyond 1σ on the same side. */
  FOUR_OF_FIVE_BEYOND_ONE_SIGMA(4, 5, 1),
  /** Eight in a row on the same side of the centre. */
  EIGHT_ON_ONE_SIDE(8, 8, 0);

  private final int count;
  private final int window;
  private final double sigmas;

  RunRule(int count, int window, double sigmas) {
    this.count = count;
    this.window = window;
    this.sigmas = sigmas;
  }

  /**
   * True if the rule is broken at place i: that value itself lies beyond, and so do enough of the
   * last {@code window} values on its side.
   */
  boolean brokenAt(int i, double[] x, double centre, double sigma) {
    double side = Math.signum(x[i] - centre);
    if (!beyond(x[i], side, centre, sigma)) {
      return false;
    }
    int found = 0;
    for (int j = Math.max(0, i - window + 1); j <= i; j++) {
      found += beyond(x[j], side, centre, sigma) ? 1 : 0;
    }
    return found >= count;
  }

  private boolean beyond(double x, double side, double centre, double sigma) {
    return side * (x - centre) > sigmas * sigma;
  }
}
