package org.siltbench.balance.format;

import org.siltbench.balance.format.LineFormat.NumberShape;

/** Reads the number of a line: digits with at most one decimal mark. */
final class Numbers {

  private final NumberShape shape;
  private final byte point;
  private final byte otherPoint;

  Numbers(NumberShape shape) {
    boolean either = shape.point() == NumberShape.EITHER;
    this.shape = shape;
    point = either ? (byte) '.' : (byte) shape.point();
    otherPoint = either ? (byte) ',' : point;
  }

  /** Up to seven digits on each side of the mark at once; longer numbers digit by digit. */
  int read(byte[] bytes, int from, int to, Match found) {
    long word = Words.at(bytes, from);
    int whole = Words.digits(word);
    int mark = from + whole;
    if (whole == Long.BYTES || mark > to) {
      return from < to ? digitByDigit(bytes, from, to, found) : -1;
    }
    if (whole == 0) {
      return -1;
    }
    if (mark == to || !isPoint(bytes[mark])) {
      return keep(bytes, from, mark, -1, Words.number(word, whole), found);
    }
    long behind = Words.at(bytes, mark + 1);
    int places = Words.digits(behind);
    int end = mark + 1 + places;
    if (places == Long.BYTES || end > to) {
      return digitByDigit(bytes, from, to, found);
    }
    if (places == 0 || (end < to && isPoint(bytes[end]))) {
      return -1;
    }
    long value = Words.number(word, whole) * Scales.power(places) + Words.number(behind, places);
    return keep(bytes, from, end, mark, value, found);
  }

  private int digitByDigit(byte[] bytes, int from, int to, Match found) {
    long value = 0;
    int at = from;
    int limit = Math.min(to, from + Scales.MAX_DIGITS + 1);
    int mark = -1;
    for (; at < limit; at++) {
      int digit = bytes[at] - '0';
      if (digit >= 0 && digit <= 9) {
        value = value * 10 + digit;
      } else if (mark < 0 && isPoint(bytes[at])) {
        mark = at;
      } else {
        break;
      }
    }
    boolean goesOn = at < to && (Words.isDigit(bytes[at]) || isPoint(bytes[at]));
    boolean tooLong = goesOn || at - from - (mark < 0 ? 0 : 1) > Scales.MAX_DIGITS;
    boolean bare = at == from || mark == from || mark == at - 1;
    return tooLong || bare ? -1 : keep(bytes, from, at, mark, value, found);
  }

  private boolean isPoint(byte b) {
    return b == point || b == otherPoint;
  }

  private int keep(byte[] bytes, int from, int end, int mark, long value, Match found) {
    int decimals = mark < 0 ? 0 : end - mark - 1;
    found.numberStart = from;
    found.numberEnd = end;
    found.mantissa = value;
    found.decimals = decimals;
    boolean fits = decimals >= shape.least() && decimals <= shape.most();
    return fits && !mayPartThousands(bytes, from, mark, decimals) ? end : -1;
  }

  private boolean mayPartThousands(byte[] bytes, int from, int mark, int decimals) {
    return decimals == 3
        && bytes[mark] == ','
        && shape.point() == NumberShape.EITHER
        && !(mark == from + 1 && bytes[from] == '0');
  }
}
