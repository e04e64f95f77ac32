package org.siltbench.balance.format;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The blanks, the sign and the digits before the decimal mark of one line, counted from its
 * beginning. Eight bytes before the mark may say something else in every line; of what stands
 * further to the left only a sign may.
 *
 * @param begin where the first blank, sign or digit stands
 * @param from where the last eight of them begin
 * @param to the place behind the last digit
 * @param farSign where a sign stands before those eight; below zero if none does
 * @param nearSign whether a sign stands in those eight
 */
record FrontPlace(int begin, int from, int to, int farSign, boolean nearSign) {

  /** The places in a line; null if there are tabs or too many digits. */
  static @Nullable FrontPlace of(byte[] bytes, int line, Match found, int begin) {
    int behind = found.decimals == 0 ? 0 : found.decimals + 1;
    int to = found.numberEnd - behind - line;
    int from = Math.max(begin, to - Long.BYTES);
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

  /** A front with so many digits, and a sign at one of the eight places or, at the ninth, none. */
  byte[] drawn(int digits, int sign) {
    byte[] text = new byte[to - begin];
    Arrays.fill(text, (byte) ' ');
    Arrays.fill(text, text.length - digits, text.length, (byte) '1');
    if (farSign >= 0) {
      text[farSign - begin] = '+';
    }
    if (sign < Long.BYTES) {
      text[text.length - Long.BYTES + sign] = '+';
    }
    return text;
  }
}
