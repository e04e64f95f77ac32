package org.siltbench.calc.quantity;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * Exact decimals as whole numbers of a small unit, read and written without big numbers where they
 * are short. What is unusual goes the long way, so that both ways say the same.
 */
final class FixedPoint {

  private static final int MOST_DIGITS = 18;
  private static final int MOST_TEXT = 40;
  private static final Pattern PLAIN = Pattern.compile("[-+]?[0-9]*[.]?[0-9]*");
  private static final long[] POWERS = new long[MOST_DIGITS + 1];

  static {
    POWERS[0] = 1;
    for (int i = 1; i <= MOST_DIGITS; i++) {
      POWERS[i] = 10 * POWERS[i - 1];
    }
  }

  private FixedPoint() {}

  /**
   * The same for people: each fault is told with what was expected.
   *
   * @throws NumberFormatException if it is no decimal number, finer than the unit or out of range
   */
  static long parse(String text, int scale, String what) {
    try {
      return parse(text, scale);
    } catch (ArithmeticException e) {
      throw no(text, "finer than a billionth or out of range, not " + what, e);
    } catch (NumberFormatException e) {
      throw no(text, "not " + what, e);
    }
  }

  private static NumberFormatException no(String text, String why, RuntimeException cause) {
    String shown = text.length() > MOST_TEXT ? text.substring(0, MOST_TEXT) + "…" : text;
    NumberFormatException out = new NumberFormatException(why + ": \"" + shown + '"');
    out.initCause(cause);
    return out;
  }

  /**
   * A decimal text times 10^scale.
   *
   * @throws NumberFormatException if the text is no decimal number
   * @throws ArithmeticException if it is finer than the unit or out of range
   */
  static long parse(String text, int scale) {
    int at = !text.isEmpty() && (text.charAt(0) == '-' || text.charAt(0) == '+') ? 1 : 0;
    long digits = 0;
    int count = 0;
    int point = -1;
    for (int i = at; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9' && count < MOST_DIGITS) {
        digits = 10 * digits + (c - '0');
        count++;
      } else if (c == '.' && point < 0) {
        point = count;
      } else {
        return slowly(text, scale);
      }
    }
    int shift = scale - (point < 0 ? 0 : count - point);
    if (count == 0 || shift < 0 || count + shift > MOST_DIGITS) {
      return slowly(text, scale);
    }
    long value = digits * POWERS[shift];
    return text.charAt(0) == '-' ? -value : value;
  }

  private static long slowly(String text, int scale) {
    if (text.length() > MOST_TEXT || !PLAIN.matcher(text).matches()) {
      throw new NumberFormatException(text);
    }
    return new BigDecimal(text).movePointRight(scale).longValueExact();
  }

  /** The shortest plain decimal of a whole number over 10^scale, scale from 1 to 18. */
  static String plain(long value, int scale) {
    if (value == Long.MIN_VALUE) {
      return BigDecimal.valueOf(value, scale).stripTrailingZeros().toPlainString();
    }
    char[] out = new char[MOST_TEXT];
    int at = MOST_TEXT;
    long left = Math.abs(value);
    boolean zeros = true;
    for (int place = 0; left > 0 || place <= scale; place++) {
      if (place == scale && at < MOST_TEXT) {
        out[--at] = '.';
      }
      char digit = (char) ('0' + left % 10);
      left /= 10;
      zeros &= digit == '0' && place < scale;
      if (!zeros) {
        out[--at] = digit;
      }
    }
    if (value < 0) {
      out[--at] = '-';
    }
    return new String(out, at, MOST_TEXT - at);
  }
}
