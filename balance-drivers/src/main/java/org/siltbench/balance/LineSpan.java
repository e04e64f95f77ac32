package org.siltbench.balance;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

/**
 * The length of a line and where in it the number stands, in one word: ten bits for each place, the
 * top bit for a minus sign.
 */
public final class LineSpan {

  /** The longest line that can be told of. */
  public static final int LONGEST = 1023;

  private static final int BITS = 10;

  private LineSpan() {}

  /**
   * Packs the places.
   *
   * @param length the length of the line
   * @param numberStart where the first digit stands in it
   * @param numberEnd the place behind the last digit
   */
  public static int of(int length, int numberStart, int numberEnd, boolean negative) {
    return length
        | (numberStart << BITS)
        | (numberEnd << (2 * BITS))
        | (negative ? Integer.MIN_VALUE : 0);
  }

  /** The span of a like line, whose number begins so many places further to the left. */
  public static int with(int span, int further, boolean negative) {
    return (span - (further << BITS)) | (negative ? Integer.MIN_VALUE : 0);
  }

  static String line(byte[] bytes, int start, int span) {
    return new String(bytes, start, span & LONGEST, ISO_8859_1);
  }

  /** The number as displayed: no plus, no superfluous zeros in front, a point. */
  static String number(byte[] bytes, int lineStart, int span) {
    int start = lineStart + ((span >>> BITS) & LONGEST);
    int end = lineStart + ((span >>> (2 * BITS)) & LONGEST);
    while (start + 1 < end && bytes[start] == '0' && isDigit(bytes[start + 1])) {
      start++;
    }
    String shown = new String(bytes, start, end - start, ISO_8859_1).replace(',', '.');
    return span < 0 ? "-" + shown : shown;
  }

  private static boolean isDigit(byte b) {
    return b >= '0' && b <= '9';
  }
}
