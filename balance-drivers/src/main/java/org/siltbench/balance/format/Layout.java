package org.siltbench.balance.format;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.LineSpan;
import org.siltbench.balance.Reading;

/**
 * Where the fields of a line stand, as one line of that length had them. Another line is asked only
 * whether it is laid out the same: then all of it is read at once, without a search, and as the
 * walk would have read it. {@link Columns} draws it up and sees to that.
 *
 * <p>The decimal mark, or else the last digit, has one place. To the left of it, in eight bytes at
 * most, are blanks, a sign and digits in any number that the format allows.
 */
final class Layout {

  private static final long PLUS = '+' ^ ' ';
  private static final long MINUS = '-' ^ ' ';

  private final int length;
  private final SameBytes same;
  private final OpenFields open;
  private final String unit;
  private final int front;
  private final int shift;
  private final long filling;
  private final int point;
  private final int[] signs;
  private final int farSign;
  private final boolean negative;
  private final int behind;
  private final long decimalMask;
  private final int decimalShift;
  private final long power;
  private final long scale;
  private final long most;
  private final int span;

  /**
   * Draws it up from a line that was walked.
   *
   * @param same the bytes that are the same in every such line
   * @param open the fields that may say something else in each, other than the value
   * @param place where the digits before the decimal mark stand, and what is before them
   * @param signs by the number of digits, the places that a sign may have; bit 8 for no sign
   * @param number what was found in that line
   * @param unit the symbol of its unit
   */
  Layout(
      SameBytes same,
      OpenFields open,
      FrontPlace place,
      int[] signs,
      Match number,
      long scale,
      String unit,
      int length) {
    this.same = same;
    this.open = open;
    this.unit = unit;
    this.length = length;
    this.signs = signs;
    this.scale = scale;
    front = place.from();
    point = place.to();
    shift = Long.SIZE - place.width() * Byte.SIZE;
    filling = Words.SPACES & Words.mask(Long.BYTES - place.width());
    farSign = place.farSign();
    negative = number.negative && !place.hasSign();
    decimalMask = Words.mask(number.decimals);
    decimalShift = (Long.SIZE - number.decimals * Byte.SIZE) % Long.SIZE;
    power = Scales.power(number.decimals);
    most = Long.MAX_VALUE / scale;
    behind = number.decimals == 0 ? point : point + 1;
    span = LineSpan.of(length, point, behind + number.decimals, false);
  }

  /** The reading of a line that is laid out so; else null, and the line must be walked. */
  @Nullable Reading read(byte[] bytes, int from, int to, long nanos, Instant at) {
    if (to - from != length || to + Long.BYTES > bytes.length || !same.in(bytes, from)) {
      return null;
    }
    int rank = open.meaning(bytes, from, to);
    if (rank > Meaning.LAST_WITH_MASS) {
      return null;
    }
    long before = (Words.inside(bytes, from + front) << shift) | filling;
    int digits = Words.lastDigits(before);
    long others = (-1L >>> 1) >>> (digits * Byte.SIZE - 1);
    long rest = (before ^ Words.SPACES) & others;
    int place = Long.numberOfTrailingZeros(rest) >>> 3;
    long sign = rest >>> (place * Byte.SIZE);
    long decimals = Words.values(Words.inside(bytes, from + behind)) & decimalMask;
    long value = Words.number(Words.values(before) & ~others) * power;
    value += Words.number(decimals << decimalShift);
    boolean fits =
        ((signs[digits] >>> place) & 1) != 0 && Words.areDigits(decimals) && value <= most;
    boolean minus = negative || sign == MINUS;
    if (!fits || !(minus || sign == 0 || sign == PLUS)) {
      return null;
    }
    return farSign < 0
        ? reading(minus, value, digits, rank, bytes, from, nanos, at)
        : farSigned(value, digits, rank, bytes, from, nanos, at);
  }

  private @Nullable Reading farSigned(
      long value, int digits, int rank, byte[] bytes, int from, long nanos, Instant at) {
    byte sign = bytes[from + farSign];
    return sign == '-' || sign == '+'
        ? reading(sign == '-', value, digits, rank, bytes, from, nanos, at)
        : null;
  }

  private Reading reading(
      boolean minus,
      long value,
      int digits,
      int rank,
      byte[] bytes,
      int from,
      long nanos,
      Instant at) {
    long mass = minus ? -(value * scale) : value * scale;
    return Reading.ofLine(
        mass,
        unit,
        Meaning.markOf(rank),
        bytes,
        from,
        LineSpan.with(span, digits, minus),
        nanos,
        at);
  }
}
