package org.siltbench.balance.learn;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * A line format drawn from a grammar of invented shapes. It writes lines by its own rules and
 * shares no code with the formats it tests.
 */
final class InventedFormat {

  private static final String[] WORDS = {"KA", "rel", "Net", "PAN", "q7", "w.", "LU", "mm3", "NR"};
  private static final String[][] MARKS = {
    {"ok", ".."},
    {"R", "F"},
    {"=", "~"},
    {"FIX", "VAR"},
    {"1", "0"},
    {"", "*"},
    {"", "?"},
    {"rest", "move"},
    {"!", ""},
    {"zz", "az"},
  };
  private static final String[] GRAMS = {"g", "g", "g", "G", "gm", "gram"};
  private static final String[] OVERS = {"=OVER=", "^^^^^^", "HHHHHH", "too much", "#######"};

  enum SignStyle {
    MINUS_ONLY,
    PLUS_AND_MINUS,
    APART,
    AFTER_NUMBER,
    AFTER_UNIT
  }

  enum MarkPlace {
    NONE,
    FIRST,
    LAST,
    UNIT_MISSING
  }

  enum Trailer {
    NONE,
    WORD,
    COUNTER,
    XOR,
    ADD,
    NEGATED
  }

  final String end;
  final String head;
  final boolean counterFirst;
  final String separator;
  final SignStyle sign;
  final boolean zeros;
  final int width;
  final char point;
  final int decimals;
  final String unit;
  final int unitScale;
  final int unitGap;
  final MarkPlace markPlace;
  final String still;
  final String moving;
  final Trailer trailer;
  final String over;
  private int counter;

  InventedFormat(SplittableRandom r) {
    end = pick(r, "\r\n", "\r\n", "\n", "\r", "\u0003", "\n\r", ";");
    String stx = end.equals("\u0003") ? "\u0002" : "";
    head = stx + (r.nextInt(3) == 0 ? pick(r, WORDS) : "");
    counterFirst = r.nextInt(5) == 0;
    sign = SignStyle.values()[r.nextInt(SignStyle.values().length)];
    zeros = r.nextInt(6) == 0;
    width = r.nextInt(3) == 0 ? 0 : 8 + r.nextInt(5);
    point = r.nextInt(3) == 0 ? ',' : '.';
    boolean milli = r.nextInt(4) == 0;
    decimals = milli ? 1 + r.nextInt(3) : 2 + r.nextInt(5);
    unit = milli ? pick(r, "mg", "mg", "MG") : pick(r, GRAMS);
    unitScale = milli ? 6 : 9;
    unitGap = r.nextInt(3);
    markPlace = MarkPlace.values()[r.nextInt(4)];
    String[] mark = MARKS[r.nextInt(MARKS.length)];
    still = mark[0];
    moving = mark[1];
    trailer = Trailer.values()[r.nextInt(Trailer.values().length)];
    separator = point == ',' || end.equals(";") ? pick(r, " ", "  ", "|") : pick(r, " ", ",", ";");
    over = pick(r, OVERS);
  }

  private static String pick(SplittableRandom r, String... of) {
    return of[r.nextInt(of.length)];
  }

  boolean hasMark() {
    return markPlace != MarkPlace.NONE;
  }

  /** A mass in nanograms that this format can show, from a wish in grams. */
  long shown(double grams) {
    BigDecimal step = BigDecimal.ONE.movePointLeft(decimals);
    BigDecimal value = BigDecimal.valueOf(grams).movePointRight(9 - unitScale);
    return value
        .divideToIntegralValue(step)
        .multiply(step)
        .movePointRight(unitScale)
        .longValueExact();
  }

  /** One line without its end. */
  String line(long nanograms, boolean moves) {
    String body = front(moves) + number(nanograms, moves) + back(moves);
    return switch (trailer) {
      case NONE -> body;
      case WORD -> body + separator + "end";
      case COUNTER -> body + separator + count();
      case XOR -> body + separator + hex(xor(body + separator));
      case ADD -> body + separator + hex(add(body + separator));
      case NEGATED -> body + separator + hex(-add(body + separator));
    };
  }

  String overLine() {
    return front(true) + "  " + over;
  }

  private String front(boolean moves) {
    String out = head + (head.isBlank() || head.equals("\u0002") ? "" : separator);
    out += counterFirst ? count() + separator : "";
    boolean first = markPlace == MarkPlace.FIRST;
    return first ? out + (moves ? moving : still) + separator : out;
  }

  private String count() {
    counter++;
    return String.format(Locale.ROOT, "%04d", counter);
  }

  private String back(boolean moves) {
    boolean last = markPlace == MarkPlace.LAST;
    return last ? separator + (moves ? moving : still) : "";
  }

  private String number(long nanograms, boolean moves) {
    String digits =
        BigDecimal.valueOf(Math.abs(nanograms), unitScale).setScale(decimals).toPlainString();
    boolean minus = nanograms < 0;
    String text = zeros ? "0".repeat(Math.max(0, 9 - digits.length())) + digits : digits;
    text = text.replace('.', point);
    String noUnit = " ".repeat(unitGap + unit.length());
    boolean lacks = markPlace == MarkPlace.UNIT_MISSING && moves;
    String behind = lacks ? noUnit : " ".repeat(unitGap) + unit;
    return switch (sign) {
      case MINUS_ONLY -> pad((minus ? "-" : "") + text) + behind;
      case PLUS_AND_MINUS -> pad((minus ? "-" : "+") + text) + behind;
      case APART -> (minus ? "-" : "+") + pad(text) + behind;
      case AFTER_NUMBER -> pad(text) + (minus ? "-" : " ") + behind;
      case AFTER_UNIT -> pad(text) + behind + (minus ? "-" : " ");
    };
  }

  private String pad(String text) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }

  private static String hex(int value) {
    return String.format(Locale.ROOT, "%02X", value & 255);
  }

  private static int xor(String text) {
    return text.chars().reduce(0, (a, b) -> a ^ b);
  }

  private static int add(String text) {
    return text.chars().sum();
  }

  @Override
  public String toString() {
    return "mark "
        + markPlace
        + " '"
        + still
        + "'/'"
        + moving
        + "', trailer "
        + trailer
        + ", sign "
        + sign
        + ": ["
        + line(shown(0.1234567), false)
        + "] ["
        + line(shown(-0.0234567), true)
        + "]";
  }
}
