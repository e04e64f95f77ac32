package org.siltbench.calc.result;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Figures as papers show them. Rounding is half to even (Standard Methods 1050 B); JSON keeps the
 * unrounded figures.
 */
public final class ForPeople {

  private static final int LIMIT_DIGITS = 2;
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
    BigDecimal exact = new BigDecimal(Double.toString(value));
    BigDecimal figures = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
    int places = Math.max(0, figures.scale());
    if (limit > 0) {
      places = Math.min(places, places(limit));
    }
    boolean coarser = figures.scale() < 0;
    return (coarser ? figures : exact.setScale(places, RoundingMode.HALF_EVEN)).toPlainString();
  }

  /** A reporting limit: two significant figures at most, trailing zeros left out. */
  public static String limit(double limit) {
    return limit > 0 ? rounded(limit).toPlainString() : "";
  }

  private static BigDecimal rounded(double limit) {
    BigDecimal two =
        new BigDecimal(Double.toString(limit))
            .round(new MathContext(LIMIT_DIGITS, RoundingMode.HALF_EVEN))
            .stripTrailingZeros();
    return two.scale() < 0 ? two.setScale(0) : two;
  }

  /** Decimal places of a reporting limit; a limit of ten or more has none. */
  private static int places(double limit) {
    return rounded(limit).scale();
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
