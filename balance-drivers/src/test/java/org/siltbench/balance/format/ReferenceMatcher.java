package org.siltbench.balance.format;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.LineFormat.NumberShape;

/** The plain matcher that the compiled one is held against: part by part, byte by byte. */
final class ReferenceMatcher {

  /** More digits than any mass in nanograms has. */
  static final int MAX_DIGITS = 18;

  private static final long[] POWERS = powers();

  private enum Op {
    TEXT,
    BLANKS,
    GAP,
    SIGN,
    NUMBER,
    UNIT,
    UNIT_OR_NONE,
    MARK,
    DIGITS,
    WORD,
    ANY,
    CHECK
  }

  private final Op[] ops;
  private final byte[][] opTexts;
  private final int[] opCounts;
  private final Part[] parts;
  private final ReferenceChoice<MassUnit> units;
  private final ReferenceChoice<Meaning> marks;
  private final NumberShape shape;
  private final int length;
  private final @Nullable MassUnit supplied;
  private final Meaning missing;

  private int numberStart;
  private int numberEnd;
  private long mantissa;
  private int decimals;
  private boolean negative;
  private boolean comma;
  private @Nullable MassUnit unit;
  private Meaning meaning = Meaning.NOTHING;
  private long nanograms;
  private int failedPart;
  private int failedAt;

  ReferenceMatcher(LineFormat format) {
    List<Part> line = format.line();
    parts = line.toArray(new Part[0]);
    ops = line.stream().map(ReferenceMatcher::op).toArray(Op[]::new);
    opTexts = line.stream().map(ReferenceMatcher::text).toArray(byte[][]::new);
    opCounts = line.stream().mapToInt(p -> p instanceof Part.Any any ? any.count() : 0).toArray();
    units = ReferenceChoice.of(format.units().texts(), u -> u.text(), u -> u.unit());
    marks = ReferenceChoice.of(format.marks(), m -> m.text(), m -> m.meaning());
    shape = format.number();
    length = format.length();
    supplied =
        format.units().supplied() == null && format.units().missing() == Meaning.MOVING
            ? units.onlyValue()
            : format.units().supplied();
    missing = format.units().missing();
  }

  private static Op op(Part part) {
    if (part instanceof Part.UnitField u) {
      return u.optional() ? Op.UNIT_OR_NONE : Op.UNIT;
    }
    return plainOp(part);
  }

  private static Op plainOp(Part part) {
    if (part instanceof Part.Text) {
      return Op.TEXT;
    } else if (part instanceof Part.Blanks) {
      return Op.BLANKS;
    } else if (part instanceof Part.Gap) {
      return Op.GAP;
    } else if (part instanceof Part.Sign) {
      return Op.SIGN;
    } else if (part instanceof Part.Numeral) {
      return Op.NUMBER;
    } else if (part instanceof Part.MarkField) {
      return Op.MARK;
    } else if (part instanceof Part.Digits) {
      return Op.DIGITS;
    } else if (part instanceof Part.Word) {
      return Op.WORD;
    }
    return part instanceof Part.Any ? Op.ANY : Op.CHECK;
  }

  private static byte[] text(Part part) {
    return part instanceof Part.Text t ? ReferenceChoice.bytes(t.text()) : new byte[0];
  }

  boolean match(byte[] bytes, int from, int to) {
    negative = false;
    unit = supplied;
    meaning = Meaning.NOTHING;
    if (length != 0 && to - from != length) {
      return fail(-1, from);
    }
    int at = from;
    for (int i = 0; i < ops.length; i++) {
      int next = step(i, bytes, from, at, to);
      if (next < 0) {
        return fail(i, at);
      }
      at = next;
    }
    return (at == to && unit != null) || fail(ops.length, at);
  }

  private boolean fail(int part, int at) {
    failedPart = part;
    failedAt = at;
    return false;
  }

  private int step(int i, byte[] bytes, int from, int at, int to) {
    return switch (ops[i]) {
      case TEXT ->
          ReferenceChoice.startsWith(bytes, at, to, opTexts[i]) ? at + opTexts[i].length : -1;
      case BLANKS -> blanks(bytes, at, to);
      case GAP -> atLeastOne(at, blanks(bytes, at, to));
      case SIGN -> sign(bytes, at, to);
      case NUMBER -> number(bytes, at, to);
      case UNIT -> unit(bytes, at, to, false);
      case UNIT_OR_NONE -> unit(bytes, at, to, true);
      case MARK -> mark(bytes, at, to);
      case DIGITS -> atLeastOne(at, digits(bytes, at, to));
      case WORD -> atLeastOne(at, word(bytes, at, to));
      case ANY -> at + opCounts[i] <= to ? at + opCounts[i] : -1;
      case CHECK -> check((Part.Check) parts[i], bytes, from, at, to);
    };
  }

  private static int atLeastOne(int at, int next) {
    return next > at ? next : -1;
  }

  static boolean isDigit(byte b) {
    return b >= '0' && b <= '9';
  }

  private static int blanks(byte[] bytes, int from, int to) {
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

  private int number(byte[] bytes, int from, int to) {
    numberStart = from;
    long value = 0;
    int at = from;
    int limit = Math.min(to, from + MAX_DIGITS + 1);
    int point = -1;
    for (; at < limit; at++) {
      int digit = bytes[at] - '0';
      if (digit >= 0 && digit <= 9) {
        value = value * 10 + digit;
      } else if (point < 0 && isPoint(bytes[at])) {
        point = at;
      } else {
        break;
      }
    }
    mantissa = value;
    numberEnd = at;
    comma = point >= 0 && bytes[point] == ',';
    decimals = point < 0 ? 0 : at - point - 1;
    return wellFormed(bytes, from, at, to, point) ? at : -1;
  }

  private boolean isPoint(byte b) {
    return shape.point() == NumberShape.EITHER ? b == '.' || b == ',' : b == shape.point();
  }

  private boolean wellFormed(byte[] bytes, int from, int at, int to, int point) {
    int whole = point < 0 ? at - from : point - from;
    boolean tooLong = at < to && (isDigit(bytes[at]) || isPoint(bytes[at]));
    boolean ambiguous =
        point >= 0
            && bytes[point] == ','
            && shape.point() == NumberShape.EITHER
            && decimals == 3
            && !(whole == 1 && bytes[from] == '0');
    return whole > 0
        && !tooLong
        && !ambiguous
        && (point < 0 || decimals > 0)
        && at - from - (point < 0 ? 0 : 1) <= MAX_DIGITS
        && decimals >= shape.least()
        && decimals <= shape.most();
  }

  private int unit(byte[] bytes, int at, int to, boolean optional) {
    int found = units.longest(bytes, at, to);
    if (found >= 0) {
      unit = units.value(found);
      return at + units.length(found);
    }
    if (!optional || supplied == null) {
      return -1;
    }
    meaning = worse(meaning, missing);
    return at;
  }

  private int mark(byte[] bytes, int at, int to) {
    int found = marks.longest(bytes, at, to);
    if (found < 0) {
      return -1;
    }
    meaning = worse(meaning, marks.value(found));
    return at + marks.length(found);
  }

  private static Meaning worse(Meaning a, Meaning b) {
    return a.compareTo(b) >= 0 ? a : b;
  }

  private static int check(Part.Check check, byte[] bytes, int from, int at, int to) {
    if (at + 2 > to || from + check.from() > at) {
      return -1;
    }
    int stated = 16 * Character.digit(bytes[at], 16) + Character.digit(bytes[at + 1], 16);
    boolean hex = Character.digit(bytes[at], 16) >= 0 && Character.digit(bytes[at + 1], 16) >= 0;
    return hex && stated == check.sum().of(bytes, from + check.from(), at) ? at + 2 : -1;
  }

  /** Computes the mass; false if it is finer than a nanogram or out of range. */
  boolean inRange(MassUnit in) {
    int exponent = in.exponent() - decimals;
    long value = mantissa * in.factor();
    if (mantissa > Long.MAX_VALUE / 10) {
      return false;
    }
    if (exponent < 0) {
      long divisor = POWERS[-exponent];
      nanograms = signed(value / divisor);
      return value % divisor == 0;
    }
    if (value > Long.MAX_VALUE / POWERS[exponent]) {
      return false;
    }
    nanograms = signed(value * POWERS[exponent]);
    return true;
  }

  private long signed(long value) {
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
    return Objects.requireNonNull(unit, "a match has a unit");
  }

  Meaning meaning() {
    return meaning;
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
