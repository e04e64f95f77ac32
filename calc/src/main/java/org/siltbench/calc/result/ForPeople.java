package org.siltbench.calc.result;

/**
 * Figures as papers show them. Rounding is half to even (Standard Methods 1050 B); JSON keeps the
 * unrounded figures.
 */
public final class ForPeople {

  private static final int U_DIGITS = 2;

  private ForPeople() {}

  /**
   * A concentration: at most {@code digits} significant figures, never beyond the place of the
   * reporting limit. Zeros are written as measured ("30", "0.0"), never as a power of ten.
   *
   * @param value any unit; NaN gives an empty text, infinity its sign and ∞
   * @param digits 1 or more
   * @param limit the reporting limit in the same unit; NaN, zero or below for none
   */
  public static String value(double value, int digits, double limit) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "" : value > 0 ? "∞" : "-∞";
    }
    return Figures.of(value, digits, limit > 0 ? Figures.places(limit) : Figures.ANY_PLACES);
  }

  /** A reporting limit: two significant figures at most, trailing zeros left out. */
  public static String limit(double limit) {
    return limit > 0 ? Figures.two(limit).toPlainString() : "";
  }

  /**
   * A result against its reporting limit: {@code "33.1"}, or {@code "< 2.5 (1.2)"} below it, the
   * value kept in brackets.
   */
  public static String result(double value, int digits, double limit) {
    String shown = value(value, digits, limit);
    return value < limit ? "< " + limit(limit) + " (" + shown + ")" : shown;
  }

  /** An uncertainty: two significant figures; NaN gives an empty text. */
  public static String uncertainty(double u) {
    return value(u, U_DIGITS, 0);
  }
}
