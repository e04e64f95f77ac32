package org.siltbench.balance.format;

import java.time.Instant;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.LineSpan;
import org.siltbench.balance.Reading;

/**
 * Where the fields of a line stand, as one line of that length had them. Another line is asked only
 * whether it is laid out the same: then all of it is read at once, without a search, and as the
 * walk would have read it. {@link Columns} draws it up and sees to that.
 *
 * <p>The decimal mark, or else the end of the last digit, has one place. To the left of it, in
 * seven bytes at most, are blanks, a sign and digits in any number that the format allows; the
 * number has eight digits at most.
 */
final class Layout {

  /** The most decimals: with their mark they are a word. */
  static final int MOST_DECIMALS = Long.BYTES - 1;

  /** The most that eight digits write. */
  static final long MOST = 99_999_999;

  private static final long PLUS = '+' ^ ' ';
  private static final long MINUS = '-' ^ ' ';

  /** The place of a sign that is not there: behind the last byte. */
  static final int NO_SIGN = Long.BYTES;

  /** No sign, where there must be one. */
  private static final long MISSING = -1;

  private static final int TO_BYTES = 3;

  private final int length;
  private final @Nullable SameBytes same;
  private final OpenFields open;
  private final String unit;
  private final int front;
  private final int shift;
  private final long filling;
  private final long fronts;
  private final int point;
  private final long behind;
  private final long behindMask;
  private final int decimalShift;
  private final long decimalMask;
  private final int wholeShift;
  private final int farSign;
  private final boolean signInFront;
  private final boolean negative;
  private final long scale;
  private final int span;

  /**
   * Draws it up from a line that was walked.
   *
   * @param line holds that line from {@code from} on
   * @param same marks the bytes that are the same in every such line; written over
   * @param open the fields that may say something else in each, other than the value
   * @param place where the digits before the decimal mark stand, and what is before them
   * @param fronts the bits that {@link #front(int, int)} has for what may stand there
   * @param number what was found in that line
   * @param scale what its last digit is worth, ng
   * @param unit the symbol of its unit
   */
  Layout(
      byte[] line,
      int from,
      boolean[] same,
      OpenFields open,
      FrontPlace place,
      long fronts,
      Match number,
      long scale,
      String unit) {
    this.open = open;
    this.unit = unit;
    this.fronts = fronts;
    this.scale = scale;
    length = same.length;
    front = place.from();
    point = place.to();
    shift = Long.SIZE - place.width() * Byte.SIZE;
    filling = Words.SPACES & Words.mask(Long.BYTES - place.width());
    farSign = place.farSign();
    negative = number.negative && !place.hasSign();
    signInFront = farSign < 0 && !negative;
    wholeShift = number.decimals * Byte.SIZE;
    decimalShift = (MOST_DECIMALS - number.decimals) * Byte.SIZE;
    decimalMask = ~Words.mask(Long.BYTES - number.decimals);
    behindMask = SameBytes.mask(same, point);
    behind = Words.at(line, from + point) & behindMask;
    Arrays.fill(same, point, Math.min(point + Long.BYTES, length), false);
    this.same = SameBytes.of(line, from, same);
    span = LineSpan.of(length, point, number.numberEnd - from, false);
  }

  /**
   * The bit of a front with so many digits, one to seven.
   *
   * @param sign the place of its sign in the word, or {@link #NO_SIGN}; no sign has the first place
   */
  static long front(int digits, int sign) {
    return 1L << (digits * Byte.SIZE + sign);
  }

  /** The reading of a line that is laid out so; else null, and the line must be walked. */
  @Nullable Reading read(byte[] bytes, int from, int to, long nanos, Instant at) {
    if (to - from != length || to + Long.BYTES > bytes.length) {
      return null;
    }
    long tail = Words.inside(bytes, from + point);
    if (((tail ^ behind) & behindMask) != 0 || !(same == null || same.in(bytes, from))) {
      return null;
    }
    Reading.Mark mark = open.mark(bytes, from, to);
    long decimals = Words.values(tail << decimalShift) & decimalMask;
    return mark != null && Words.areDigits(decimals)
        ? reading(mark, decimals, bytes, from, nanos, at)
        : null;
  }

  private @Nullable Reading reading(
      Reading.Mark mark, long decimals, byte[] bytes, int from, long nanos, Instant at) {
    long before = (Words.inside(bytes, from + front) << shift) | filling;
    int digits = Words.bitsOfLastDigits(before);
    long others = -1L >>> digits;
    long rest = (before ^ Words.SPACES) & others;
    int place = Long.numberOfTrailingZeros(rest) >>> TO_BYTES;
    if (((fronts >>> (digits + place)) & 1) == 0) {
      return null;
    }
    long sign = signInFront ? rest >>> (place << TO_BYTES) : otherSign(bytes, from);
    if (sign != PLUS && sign != 0 && sign != MINUS) {
      return null;
    }
    boolean minus = sign == MINUS;
    long whole = (Words.values(before) & ~others) >>> wholeShift;
    long mass = Words.number(whole | decimals) * scale;
    int places = LineSpan.with(span, digits >>> TO_BYTES, minus);
    return Reading.ofLine(minus ? -mass : mass, unit, mark, bytes, from, places, nanos, at);
  }

  /** The sign behind the number, which is always the same; or one far to the left of it. */
  private long otherSign(byte[] bytes, int from) {
    if (negative) {
      return MINUS;
    }
    byte far = bytes[from + farSign];
    return far == ' ' ? MISSING : far ^ ' ';
  }
}
