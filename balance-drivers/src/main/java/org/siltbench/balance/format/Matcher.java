package org.siltbench.balance.format;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.balance.format.LineFormat.NumberShape;
import org.siltbench.balance.format.LineFormat.Units;
import org.siltbench.balance.format.ValueSteps.Pad;

/**
 * Matches one line against the parts of a format, left to right, and keeps what it found. The parts
 * are laid out once as a program of small steps over bytes; a line is walked by it without an
 * object.
 */
final class Matcher {

  /** More digits than any mass in nanograms has. */
  static final int MAX_DIGITS = 18;

  private static final long[] POWERS = powers();
  private static final int NO_UNIT = -1;

  /** More decimals than a format allows. */
  private static final int PLACES = 10;

  private final int[] steps;
  private final byte[][] texts;
  private final int[] counts;
  private final Part[] parts;
  private final Choice<MassUnit> units;
  private final Choice<Meaning> marks;
  private final NumberShape shape;
  private final int length;
  private final MassUnit[] unitValues;
  private final long[] scales;
  private final int[] markMeanings;
  private final int supplied;
  private final int missing;
  private final byte point;
  private final byte otherPoint;
  private final boolean markFirst;
  private final boolean fused;
  private final int fewest;
  private final int most;
  private final long unitWord;
  private final long unitMask;
  private final int unitLength;
  private final int valueFrom;
  private final int valueTo;
  private final boolean signed;
  private final Pad before;
  private final Pad between;
  private final Pad after;

  private int numberStart;
  private int numberEnd;
  private long mantissa;
  private int decimals;
  private boolean negative;
  private boolean comma;
  private int unit;
  private int meaning;
  private long nanograms;
  private int end;
  private int failedPart;
  private int failedAt;

  Matcher(LineFormat format) {
    List<Part> line = format.line();
    parts = line.toArray(new Part[0]);
    steps = line.stream().mapToInt(Step::of).toArray();
    ValueSteps value = ValueSteps.in(steps);
    valueFrom = value.from();
    markFirst = valueFrom > 0 && steps[0] == Step.MARK;
    valueTo = value.to();
    signed = value.sign();
    before = value.before();
    between = value.between();
    after = value.after();
    texts = line.stream().map(Matcher::text).toArray(byte[][]::new);
    counts = line.stream().mapToInt(p -> p instanceof Part.Any any ? any.count() : 0).toArray();
    units = Choice.of(format.units().texts(), u -> u.text(), u -> u.unit());
    marks = Choice.of(format.marks(), m -> m.text(), m -> m.meaning());
    shape = format.number();
    length = format.length();
    boolean either = shape.point() == NumberShape.EITHER;
    point = either ? (byte) '.' : (byte) shape.point();
    otherPoint = either ? (byte) ',' : point;
    fewest = Math.max(1, shape.least());
    most = Math.min(7, shape.most());
    boolean simple = format.units().texts().size() == 1 && units.length(0) <= Long.BYTES;
    String only = simple ? format.units().texts().get(0).text() : "";
    unitLength = only.length();
    fused = unitLength > 0 && valueFrom < valueTo;
    unitWord = Words.of(Choice.bytes(only));
    unitMask = Words.mask(unitLength);
    unitValues = unitValues(format.units());
    scales = scales(unitValues);
    markMeanings = marks.values().stream().mapToInt(Meaning::rank).toArray();
    supplied = unitValues.length > units.values().size() ? units.values().size() : NO_UNIT;
    missing = format.units().missing().rank();
  }

  /** The units by the place of their text; behind them the supplied one, if there is one. */
  private MassUnit[] unitValues(Units format) {
    List<MassUnit> all = new ArrayList<>(units.values());
    boolean onlyOne = all.stream().distinct().count() == 1;
    if (format.supplied() != null) {
      all.add(format.supplied());
    } else if (format.missing() == Meaning.MOVING && onlyOne) {
      all.add(all.get(0));
    }
    return all.toArray(new MassUnit[0]);
  }

  private static byte[] text(Part part) {
    return part instanceof Part.Text t ? Choice.bytes(t.text()) : new byte[0];
  }

  /** Matches the whole of a line. */
  boolean match(byte[] bytes, int from, int to) {
    return (length == 0 || to - from == length || fail(-1, from))
        && walk(bytes, from, to)
        && ((end == to && unit != NO_UNIT) || fail(steps.length, end));
  }

  private boolean walk(byte[] bytes, int from, int to) {
    negative = false;
    unit = supplied;
    meaning = 0;
    int at = from;
    int first = 0;
    if (markFirst) {
      at = mark(bytes, from, to);
      if (at < 0) {
        return fail(0, from);
      }
      first = 1;
    }
    for (int i = first; i < valueFrom; i++) {
      int next = step(i, bytes, from, at, to);
      if (next < 0) {
        return fail(i, at);
      }
      at = next;
    }
    int behind = fused ? value(bytes, at, to) : -1;
    if (behind >= 0 && valueTo == steps.length) {
      end = behind;
      return true;
    }
    return behind < 0
        ? walkOn(valueFrom, bytes, from, at, to)
        : walkOn(valueTo, bytes, from, behind, to);
  }

  private boolean walkOn(int part, byte[] bytes, int from, int start, int to) {
    int at = start;
    for (int i = part; i < steps.length; i++) {
      int next = step(i, bytes, from, at, to);
      if (next < 0) {
        return fail(i, at);
      }
      at = next;
    }
    end = at;
    return true;
  }

  /**
   * Sign, number and unit with the blanks between them in one go, for numbers of up to seven digits
   * on each side of the mark; -1 where it is not that simple, and the steps are then taken one by
   * one.
   */
  private int value(byte[] bytes, int from, int to) {
    int at = pad(before, bytes, from);
    if (at < 0) {
      return -1;
    }
    boolean minus = false;
    if (signed) {
      int c = at < to ? bytes[at] : 0;
      minus = c == '-';
      at += minus || c == '+' ? 1 : 0;
    }
    at = pad(between, bytes, at);
    if (at < 0) {
      return -1;
    }
    long word = Words.at(bytes, at);
    int whole = Words.digits(word);
    int mark = at + whole;
    if (whole == 0 || whole == Long.BYTES || mark >= to || bytes[mark] != point) {
      return -1;
    }
    long behind = Words.at(bytes, mark + 1);
    int places = Words.digits(behind);
    int numberTo = mark + 1 + places;
    if (places < fewest || places > most) {
      return -1;
    }
    int next = pad(after, bytes, numberTo);
    if (next < 0 || next + unitLength > to || (Words.at(bytes, next) & unitMask) != unitWord) {
      return -1;
    }
    numberStart = at;
    numberEnd = numberTo;
    mantissa = Words.number(word, whole) * POWERS[places] + Words.number(behind, places);
    decimals = places;
    negative = minus;
    unit = 0;
    return next + unitLength;
  }

  /** Passes over up to seven spaces; -1 if there are more, or none where one must be. */
  private static int pad(Pad pad, byte[] bytes, int at) {
    if (pad == Pad.NONE) {
      return at;
    }
    int spaces = Words.spaces(Words.at(bytes, at));
    boolean simple = spaces != Long.BYTES && (spaces > 0 || pad == Pad.BLANKS);
    return simple ? at + spaces : -1;
  }

  private boolean fail(int part, int at) {
    failedPart = part;
    failedAt = at;
    return false;
  }

  private int step(int i, byte[] bytes, int from, int at, int to) {
    return switch (steps[i]) {
      case Step.BLANKS -> blanks(bytes, at, to);
      case Step.GAP -> atLeastOne(at, blanks(bytes, at, to));
      case Step.SIGN -> sign(bytes, at, to);
      case Step.NUMBER -> number(bytes, at, to);
      case Step.UNIT -> unit(bytes, at, to, false);
      case Step.MARK -> mark(bytes, at, to);
      case Step.TEXT -> Choice.startsWith(bytes, at, to, texts[i]) ? at + texts[i].length : -1;
      default -> rare(i, bytes, from, at, to);
    };
  }

  private int rare(int i, byte[] bytes, int from, int at, int to) {
    return switch (steps[i]) {
      case Step.UNIT_OR_NONE -> unit(bytes, at, to, true);
      case Step.DIGITS -> atLeastOne(at, digits(bytes, at, to));
      case Step.WORD -> atLeastOne(at, word(bytes, at, to));
      case Step.ANY -> at + counts[i] <= to ? at + counts[i] : -1;
      default -> check((Part.Check) parts[i], bytes, from, at, to);
    };
  }

  private static int atLeastOne(int at, int next) {
    return next > at ? next : -1;
  }

  static boolean isDigit(byte b) {
    return b >= '0' && b <= '9';
  }

  private static int blanks(byte[] bytes, int from, int to) {
    int run = Words.spaces(Words.at(bytes, from));
    int at = Math.min(from + run, to);
    return at < to && (run == Long.BYTES || bytes[at] == '\t') ? moreBlanks(bytes, at, to) : at;
  }

  private static int moreBlanks(byte[] bytes, int from, int to) {
    int at = from;
    while (at < to && (bytes[at] == ' ' || bytes[at] == '\t')) {
      at++;
    }
    return at;
  }

  private static int digits(byte[] bytes, int from, int to) {
    int at = from;
    while (at < to && isDigit(bytes[at])) {
      at++;
    }
    return at;
  }

  private static int word(byte[] bytes, int from, int to) {
    if (from < to && (bytes[from] == '-' || bytes[from] == '+')) {
      return from; // it may be the sign of the number
    }
    int at = from;
    while (at < to && bytes[at] > ' ' && bytes[at] != ',' && bytes[at] != ';') {
      at++;
    }
    return at;
  }

  private int sign(byte[] bytes, int at, int to) {
    if (at < to && (bytes[at] == '-' || bytes[at] == '+')) {
      negative = bytes[at] == '-';
      return at + 1;
    }
    return at;
  }

  /** Up to seven digits on each side of the mark at once; longer numbers digit by digit. */
  private int number(byte[] bytes, int from, int to) {
    long word = Words.at(bytes, from);
    int whole = Words.digits(word);
    int mark = from + whole;
    if (whole == Long.BYTES) {
      return longNumber(bytes, from, to);
    }
    if (whole == 0 || mark > to) {
      return mark > to && from < to ? longNumber(bytes, from, to) : -1;
    }
    if (mark == to || !isPoint(bytes[mark])) {
      return keep(bytes, from, mark, -1, Words.number(word, whole));
    }
    long behind = Words.at(bytes, mark + 1);
    int places = Words.digits(behind);
    int end = mark + 1 + places;
    if (places == Long.BYTES || end > to) {
      return longNumber(bytes, from, to);
    }
    if (places == 0 || (end < to && isPoint(bytes[end]))) {
      return -1;
    }
    long value = Words.number(word, whole) * POWERS[places] + Words.number(behind, places);
    return keep(bytes, from, end, mark, value);
  }

  private int longNumber(byte[] bytes, int from, int to) {
    long value = 0;
    int at = from;
    int limit = Math.min(to, from + MAX_DIGITS + 1);
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
    boolean tooLong =
        (at < to && (isDigit(bytes[at]) || isPoint(bytes[at])))
            || at - from - (mark < 0 ? 0 : 1) > MAX_DIGITS;
    boolean bare = at == from || mark == from || mark == at - 1;
    return tooLong || bare ? -1 : keep(bytes, from, at, mark, value);
  }

  private boolean isPoint(byte b) {
    return b == point || b == otherPoint;
  }

  private int keep(byte[] bytes, int from, int end, int mark, long value) {
    numberStart = from;
    numberEnd = end;
    mantissa = value;
    comma = mark >= 0 && bytes[mark] == ',';
    decimals = mark < 0 ? 0 : end - mark - 1;
    boolean fits = decimals >= shape.least() && decimals <= shape.most();
    return fits && !mayPartThousands(bytes, mark - from) ? end : -1;
  }

  private boolean mayPartThousands(byte[] bytes, int whole) {
    return comma
        && decimals == 3
        && shape.point() == NumberShape.EITHER
        && !(whole == 1 && bytes[numberStart] == '0');
  }

  private int unit(byte[] bytes, int at, int to, boolean optional) {
    int found = units.longest(bytes, at, to);
    if (found >= 0) {
      unit = found;
      return at + units.length(found);
    }
    if (!optional || supplied == NO_UNIT) {
      return -1;
    }
    meaning = Math.max(meaning, missing);
    return at;
  }

  private int mark(byte[] bytes, int at, int to) {
    int found = marks.longest(bytes, at, to);
    if (found < 0) {
      return -1;
    }
    meaning = Math.max(meaning, markMeanings[found]);
    return at + marks.length(found);
  }

  private static int check(Part.Check check, byte[] bytes, int from, int at, int to) {
    if (at + 2 > to || from + check.from() > at) {
      return -1;
    }
    int stated = 16 * Character.digit(bytes[at], 16) + Character.digit(bytes[at + 1], 16);
    boolean hex = Character.digit(bytes[at], 16) >= 0 && Character.digit(bytes[at + 1], 16) >= 0;
    return hex && stated == check.sum().of(bytes, from + check.from(), at) ? at + 2 : -1;
  }

  /** How many nanograms the last digit is worth, by unit and decimals; 0 if less than one. */
  private static long[] scales(MassUnit[] units) {
    long[] all = new long[units.length * PLACES];
    for (int i = 0; i < all.length; i++) {
      MassUnit unit = units[i / PLACES];
      int exponent = unit.exponent() - i % PLACES;
      all[i] = exponent < 0 ? 0 : unit.factor() * POWERS[exponent];
    }
    return all;
  }

  /** Computes the mass; false if it is finer than a nanogram or out of range. */
  boolean inRange() {
    long scale = scales[unit * PLACES + decimals];
    long value = mantissa * scale;
    if (scale == 0 || Math.multiplyHigh(mantissa, scale) != 0 || value < 0) {
      return scale == 0 && finer();
    }
    nanograms = withSign(value);
    return mantissa <= Long.MAX_VALUE / 10;
  }

  /** More decimals than nanograms have: a mass only if they are zeros. */
  private boolean finer() {
    MassUnit in = unitValues[unit];
    long divisor = POWERS[decimals - in.exponent()];
    long value = mantissa * in.factor();
    nanograms = withSign(value / divisor);
    return mantissa <= Long.MAX_VALUE / 10 && value % divisor == 0;
  }

  private long withSign(long value) {
    return negative ? -value : value;
  }

  private static long[] powers() {
    long[] all = new long[MAX_DIGITS + 1];
    all[0] = 1;
    for (int i = 1; i < all.length; i++) {
      all[i] = all[i - 1] * 10;
    }
    return all;
  }

  long nanograms() {
    return nanograms;
  }

  MassUnit unit() {
    return unitValues[unit];
  }

  Meaning meaning() {
    return Meaning.ofRank(meaning);
  }

  boolean negative() {
    return negative;
  }

  boolean hasComma() {
    return comma;
  }

  int numberStart() {
    return numberStart;
  }

  int numberEnd() {
    return numberEnd;
  }

  /** The part that did not fit: -1 for the length, the count of parts for what was left over. */
  int failedPart() {
    return failedPart;
  }

  int failedAt() {
    return failedAt;
  }
}
