package org.siltbench.balance.stable;

/**
 * How much the means of blocks scatter, as far as a fit over many of them is concerned: a variance
 * per block that stands for white noise, slow draughts and rounding together.
 *
 * @param reading standard deviation of single readings, divisions
 * @param block effective variance of one block, divisions squared
 */
record Noise(double reading, double block) {

  private static final double ROUNDING = 1 / Math.sqrt(12);
  private static final double PRIOR_BLOCKS = 6;
  private static final double PRIOR_CORRELATION = 0.75;
  private static final double MOST_CORRELATION = 0.9;

  /**
   * From the residuals of a fit.
   *
   * @param neighbour variance of one reading from neighbouring differences
   * @param perBlock readings in a block
   */
  static Noise of(double[] residuals, int n, int parameters, double neighbour, double perBlock) {
    double sum = 0;
    double lagged = 0;
    for (int i = 0; i < n; i++) {
      sum += residuals[i] * residuals[i];
      lagged += i == 0 ? 0 : residuals[i] * residuals[i - 1];
    }
    double white = neighbour / perBlock;
    double spread = Math.max(sum / (n - parameters), 0.5 * white);
    double effective = spread * inflation(n, sum > 0 ? lagged / sum : 0, white, spread);
    double floor = ROUNDING * Math.exp(-2 * Math.PI * Math.PI * dither(neighbour));
    double reading = Math.sqrt(Math.max(neighbour, neighbour * (1 - 1 / perBlock) + spread));
    return new Noise(reading, Math.max(effective, floor * floor * n / 2));
  }

  /** The variance under the rounding that moves the last digit, as far as it shows. */
  private static double dither(double neighbour) {
    return Math.min(neighbour, Math.max(neighbour - 1.0 / 12, neighbour * neighbour));
  }

  /** Long-run variance of a first-order autoregression over that of one block. */
  private static double inflation(int n, double lagOne, double white, double spread) {
    double slow = Math.max(0, Math.min(1, 1 - white / spread));
    if (slow == 0) {
      return 1;
    }
    double unbiased = n > 8 ? (lagOne + 2.0 / n) / (1 - 4.0 / n) : PRIOR_CORRELATION * slow;
    double seen = Math.max(0, Math.min(MOST_CORRELATION, unbiased / slow));
    double rho = (n * seen + PRIOR_BLOCKS * PRIOR_CORRELATION) / (n + PRIOR_BLOCKS);
    double long1 = (1 + rho) / (1 - rho);
    double lost = Math.max(1.0 / 3, 1 - 2 * slow * long1 / n);
    return ((1 - slow) + slow * long1) / lost;
  }
}
