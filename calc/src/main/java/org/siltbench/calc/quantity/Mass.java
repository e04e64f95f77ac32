package org.siltbench.calc.quantity;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * An exact mass, a whole number of nanograms. Masses stay exact until statistics begin; only {@link
 * #milligrams()} and its kin leave the exact world.
 *
 * <p>Range: about ±9.2 thousand tonnes. Arithmetic that would leave the range throws {@link
 * ArithmeticException}; nothing wraps round.
 *
 * @param nanograms the signed mass, ng
 */
public record Mass(long nanograms) implements Comparable<Mass> {

  /** No mass. */
  public static final Mass ZERO = new Mass(0);

  private static final int GRAM_SCALE = 9;
  private static final int MILLIGRAM_SCALE = 6;

  /**
   * Reads a decimal number of grams, for example {@code "0.12874"} or {@code "-0.00012"}.
   *
   * @throws NumberFormatException if the text is not a plain decimal number, is finer than one
   *     nanogram or out of range
   */
  public static Mass ofGrams(String text) {
    return exact(text, GRAM_SCALE, "g");
  }

  /**
   * Reads a decimal number of milligrams, for example {@code "128.74"}.
   *
   * @throws NumberFormatException as for {@link #ofGrams(String)}
   */
  public static Mass ofMilligrams(String text) {
    return exact(text, MILLIGRAM_SCALE, "mg");
  }

  /** A mass from a computed number of milligrams, rounded to the nearest nanogram. */
  public static Mass ofMilligrams(double milligrams) {
    if (!(Math.abs(milligrams) < 9.2e12)) {
      throw new IllegalArgumentException("not a mass in milligrams: " + milligrams);
    }
    return new Mass(Math.round(milligrams * 1e6));
  }

  private static Mass exact(String text, int scale, String unit) {
    return new Mass(FixedPoint.parse(text, scale, "a decimal number of " + unit));
  }

  /** This mass plus another. */
  public Mass plus(Mass other) {
    return new Mass(Math.addExact(nanograms, other.nanograms));
  }

  /** This mass less another; the sign is kept. */
  public Mass minus(Mass other) {
    return new Mass(Math.subtractExact(nanograms, other.nanograms));
  }

  /** The mass with its sign turned. */
  public Mass negate() {
    return new Mass(Math.negateExact(nanograms));
  }

  /** The mass without its sign. */
  public Mass abs() {
    return new Mass(Math.absExact(nanograms));
  }

  /** True below zero. */
  public boolean isNegative() {
    return nanograms < 0;
  }

  /** The mass in grams, as the nearest binary floating-point number: for statistics only. */
  public double grams() {
    return nanograms / 1e9;
  }

  /** The mass in milligrams, as the nearest binary floating-point number: for statistics only. */
  public double milligrams() {
    return nanograms / 1e6;
  }

  /**
   * The mass as a decimal number of grams with a fixed number of places.
   *
   * @param places 0 to 9
   * @throws ArithmeticException if digits other than zero would be lost
   */
  public String toGrams(int places) {
    return BigDecimal.valueOf(nanograms, GRAM_SCALE).setScale(places).toPlainString();
  }

  /** The exact mass in grams, without trailing zeros. */
  public String toGrams() {
    return FixedPoint.plain(nanograms, GRAM_SCALE);
  }

  /** The exact mass in milligrams, without trailing zeros. */
  public String toMilligrams() {
    return FixedPoint.plain(nanograms, MILLIGRAM_SCALE);
  }

  @Override
  public int compareTo(Mass other) {
    return Long.compare(nanograms, other.nanograms);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s g", toGrams());
  }
}
