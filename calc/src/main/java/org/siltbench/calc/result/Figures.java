package org.siltbench.calc.result;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Decimal figures of binary numbers, half to even on the number's own shortest decimal ({@link
 * Double#toString(double)}). Where a plain multiplication settles the rounding it is used; what
 * lies near a half, or is a short decimal by itself, goes the long way over {@link BigDecimal}.
 * Both ways give the same text.
 */
final class Figures {

  private static final double[] POWERS = new double[23];

  static {
    for (int i = 0; i < POWERS.length; i++) {
      POWERS[i] = Double.parseDouble("1e" + i);
    }
  }

  /** No limit of places. */
  static final int ANY_PLACES = Integer.MAX_VALUE;

  /** So near a half the multiplication's own rounding might decide. */
  private static final double NEAR_HALF = 1e-6;

  private static final int MOST_DIGITS = 9;
  private static final int MOST_TEXT = 40;
  private static final double SMALLEST = 1e-9;
  private static final double LARGEST = 1e12;

  private Figures() {}

  /**
   * At most so many significant figures, and at most so many places.
   *
   * @param value finite
   * @param digits 1 or more
   * @param mostPlaces decimal places at most, zero or more; {@link #ANY_PLACES} for no limit
   */
  static String of(double value, int digits, int mostPlaces) {
    double size = Math.abs(value);
    if (size >= SMALLEST && size < LARGEST && digits <= MOST_DIGITS) {
      String quick = quick(value, size, digits, mostPlaces);
      if (!quick.isEmpty()) {
        return quick;
      }
    }
    return slow(value, digits, mostPlaces);
  }

  /** Empty where the long way must be gone. */
  private static String quick(double value, double size, int digits, int mostPlaces) {
    int scale = digits - 1 - exponent(size);
    long figures = rounded(size, scale);
    if (figures < 0 || (figures % 10 == 0 && mayBeShorter(size, scale, figures, digits))) {
      return "";
    }
    if (scale <= 0) {
      return text(value < 0, figures, scale);
    }
    int places = Math.min(scale, mostPlaces);
    long shown = places == scale ? figures : rounded(size, places);
    return shown < 0 ? "" : text(value < 0, shown, places);
  }

  /** True where fewer figures may say all, or rounding may have made one more. */
  private static boolean mayBeShorter(double size, int scale, long figures, int digits) {
    double scaled = scale >= 0 ? size * POWERS[scale] : size / POWERS[-scale];
    return figures >= POWERS[digits] || Math.abs(scaled - figures) < NEAR_HALF;
  }

  /** Power of ten of the first figure. */
  static int exponent(double size) {
    int e = 0;
    if (size >= 1) {
      while (size >= POWERS[e + 1]) {
        e++;
      }
      return e;
    }
    while (size * POWERS[-e] < 1) {
      e--;
    }
    return e;
  }

  /** Rounded size·10^scale; −1 where the binary product cannot settle the rounding. */
  static long rounded(double size, int scale) {
    double scaled = scale >= 0 ? size * POWERS[scale] : size / POWERS[-scale];
    double whole = Math.floor(scaled);
    double rest = scaled - whole;
    if (Math.abs(rest - 0.5) < NEAR_HALF || scaled > 1e9) {
      return -1;
    }
    return (long) whole + (rest > 0.5 ? 1 : 0);
  }

  private static String text(boolean negative, long figures, int places) {
    char[] out = new char[MOST_TEXT];
    int at = MOST_TEXT;
    long left = figures;
    for (int zeros = places; zeros < 0; zeros++) {
      out[--at] = '0';
    }
    for (int place = 0; left > 0 || place <= places; place++) {
      if (place == places && places > 0) {
        out[--at] = '.';
      }
      out[--at] = (char) ('0' + left % 10);
      left /= 10;
    }
    if (negative && figures > 0) {
      out[--at] = '-';
    }
    return new String(out, at, MOST_TEXT - at);
  }

  /** The long way. */
  static String slow(double value, int digits, int mostPlaces) {
    BigDecimal exact = new BigDecimal(Double.toString(value));
    BigDecimal figures = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
    if (figures.scale() < 0) {
      return figures.toPlainString();
    }
    int places = Math.min(figures.scale(), mostPlaces);
    return exact.setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }

  /** Decimal places of the number with two figures at most, trailing zeros left out. */
  static int places(double limit) {
    if (limit >= SMALLEST && limit < LARGEST) {
      int scale = 1 - exponent(limit);
      long figures = rounded(limit, scale);
      if (figures > 0) {
        int zeros = figures % 10 != 0 ? 0 : figures % 100 != 0 ? 1 : 2;
        return Math.max(0, scale - zeros);
      }
    }
    return Math.max(0, two(limit).scale());
  }

  /** Two figures at most, trailing zeros left out. */
  static BigDecimal two(double limit) {
    return new BigDecimal(Double.toString(limit))
        .round(new MathContext(2, RoundingMode.HALF_EVEN))
        .stripTrailingZeros();
  }
}
