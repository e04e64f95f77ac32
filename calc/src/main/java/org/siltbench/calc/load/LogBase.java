package org.siltbench.calc.load;

/** The base of the logarithms of a rating curve: stated, because the bias correction needs it. */
public enum LogBase {
  /** Common logarithms, base 10. */
  TEN(Math.log(10)),
  /** Natural logarithms, base e. */
  E(1);

  private final double natural;

  LogBase(double natural) {
    this.natural = natural;
  }

  /** ln of the base. */
  double natural() {
    return natural;
  }

  double log(double x) {
    return Math.log(x) / natural;
  }

  double power(double y) {
    return Math.exp(y * natural);
  }
}
