package org.siltbench.calc.id;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;

/**
 * What the code on a bag says: filter ID, pre-weigh mass with its displayed digits, and the label's
 * revision, all under one MOD 37-2 check. The bag is its own backup.
 *
 * <p>The text: filter ID (9 characters), one character for the decimals, one for the revision, the
 * digits of the mass without point and leading zeros, the check. Example: 0.12874 g on {@code
 * K3DF0712R} ends in {@code …5112874} and a check. The value of the decimals character is the
 * number of decimals plus 0, 9 or 18, and zeros may stand before the digits: the writer takes the
 * first such spelling whose check lies within the alphabet. A filter of 0.1 g on a balance that
 * shows 0.01 mg gives 17 characters; 24 is the limit.
 *
 * @param filter the filter
 * @param grams the mass as shown by the balance, in grams: plain decimal, not negative, at most 4
 *     digits before the point, 8 after it and 10 in all; the digits after the point are kept as
 *     they are
 * @param revision the label's revision, 1 to 27; an older one is still accepted
 */
public record BagCode(FilterId filter, String grams, int revision) {

  /** The longest text of a bag code. */
  public static final int MAX_LENGTH = 24;

  /** The shortest text of a bag code. */
  public static final int MIN_LENGTH = FilterId.LENGTH + 4;

  /** The highest revision a label can carry. */
  public static final int MAX_REVISION = Alphabet.SIZE - 1;

  private static final int DECIMALS = 9;
  private static final int MAX_WHOLE = 4;
  private static final int DIGITS_AT = FilterId.LENGTH + 2;
  private static final int MAX_ZEROS = 2;
  private static final int MAX_DIGITS = MAX_LENGTH - DIGITS_AT - 1 - MAX_ZEROS;

  /**
   * @throws IllegalArgumentException if the mass is negative or cannot be written in the code, or
   *     the revision is out of range
   */
  public BagCode {
    if (revision < 1 || revision > MAX_REVISION) {
      throw new IllegalArgumentException(
          "label revision " + revision + " is not within 1 to " + MAX_REVISION);
    }
    if (!isWritable(grams)) {
      throw new IllegalArgumentException("not a mass in grams that fits a bag code: " + grams);
    }
    grams = normal(grams);
  }

  private static boolean isWritable(String grams) {
    return grams.length() <= MAX_LENGTH
        && grams.matches("\\d+(\\.\\d{1,8})?")
        && mantissa(grams).length() <= MAX_DIGITS
        && normal(grams).split("\\.")[0].length() <= MAX_WHOLE;
  }

  private static String normal(String grams) {
    return grams.replaceFirst("^0+(?=\\d)", "");
  }

  private static int decimals(String grams) {
    int point = grams.indexOf('.');
    return point < 0 ? 0 : grams.length() - point - 1;
  }

  private static String mantissa(String grams) {
    return grams.replace(".", "").replaceFirst("^0+(?=\\d)", "");
  }

  /** The mass. */
  public Mass mass() {
    return Mass.ofGrams(grams);
  }

  /** The text to print as a code: letters and digits of the alphabet, 13 to 24 characters. */
  public String text() {
    for (int zeros = 0; zeros <= MAX_ZEROS; zeros++) {
      for (int shift = decimals(grams); shift < Alphabet.SIZE; shift += DECIMALS) {
        String body =
            filter.text()
                + Alphabet.at(shift)
                + Alphabet.at(revision)
                + "0".repeat(zeros)
                + mantissa(grams);
        char check = CheckCharacter.MOD_37_2.of(body);
        if (Alphabet.contains(check)) {
          return body + check;
        }
      }
    }
    throw new IllegalStateException("no spelling of the bag code has a usable check: " + this);
  }

  /** Reads a text whose two checks hold; null when no writer of ours can have written it. */
  static @Nullable BagCode read(String text) {
    int decimals = Alphabet.valueOf(text.charAt(FilterId.LENGTH)) % DECIMALS;
    String grams = pointed(text.substring(DIGITS_AT, text.length() - 1), decimals);
    int revision = Alphabet.valueOf(text.charAt(FilterId.LENGTH + 1));
    if (revision == 0 || !isWritable(grams)) {
      return null;
    }
    BagCode code = new BagCode(new FilterId(text.substring(0, FilterId.LENGTH)), grams, revision);
    return code.text().equals(text) ? code : null;
  }

  private static String pointed(String digits, int decimals) {
    if (decimals == 0) {
      return digits;
    }
    String padded = "0".repeat(Math.max(0, decimals + 1 - digits.length())) + digits;
    int point = padded.length() - decimals;
    return padded.substring(0, point) + '.' + padded.substring(point);
  }
}
