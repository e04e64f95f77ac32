package org.siltbench.balance.stable;

/**
 * The tail of the balance's own settling that is left where a watch begins.
 *
 * @param size no larger than this, divisions
 * @param tau its time constant, s
 */
record Settling(double size, double tau) {

  /** None to speak of. */
  static final Settling NONE = new Settling(1e-3, 1);
}
