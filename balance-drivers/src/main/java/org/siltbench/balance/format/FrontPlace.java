package org.siltbench.balance.format;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The blanks, the sign and the digits before the decimal mark of one line, counted from its
 * beginning. Seven bytes before the mark may say something else in every line; of what stands
 * further to the left only a sign may.
 *
 * @param begin where the first blank, sign or digit stands
 * @param from where the last seven of them begin
 * @param to the place behind the last digit
 * @param farSign where a sign stands before those seven; below zero if none does
 * @param nearSign whether a sign stands in those seven
 */
record FrontPlace(int begin, int from, int to, int farSign, boolean nearSign) {

  private static final int WIDEST = Long.BYTES - 1;

  /** The places in a line; null if there are tabs or too many digits. */
  static @Nullable FrontPlace of(byte[] bytes, int line, Match found, int begin) {
    int behind = found.decimals == 0 ? 0 : found.decimals + 1;
    int to = found.numberEnd - behind - line;
    int from = Math.max(begin, to - WIDEST);
    int sign = -1;
    for (int i = begin; i < found.numberStart - line; i++) {
      byte c = bytes[line + i];
      if (c == '+' || c == '-') {
        sign = i;
      } else if (c != ' ') {
        return null;
      }
    }
    boolean tooLong = found.numberStart - line < from;
    return tooLong ? null : new FrontPlace(begin, from, to, sign < from ? sign : -1, sign >= from);
  }

  int width() {
    return to - from;
  }

  boolean hasSign() {
    return farSign >= 0 || nearSign;
  }

  /** Takes out of what is the same in every line what may change. */
  void open(boolean[] same) {
    Arrays.fill(same, from, to, false);
    if (farSign >= 0) {
      same[farSign] = false;
    }
  }

  /** A front with so many digits and no sign among its last seven bytes. */
  byte[] drawn(int digits) {
    byte[] text = new byte[to - begin];
    Arrays.fill(text, (byte) ' ');
    Arrays.fill(text, text.length - digits, text.length, (byte) '1');
    if (farSign >= 0) {
      text[farSign - begin] = '+';
    }
    return text;
  }

  /** The same with a sign at one of those seven, as in a word that they end. */
  byte[] drawn(int digits, int sign) {
    byte[] text = drawn(digits);
    text[text.length - Long.BYTES + sign] = '+';
    return text;
  }
}
