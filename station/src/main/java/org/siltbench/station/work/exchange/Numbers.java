package org.siltbench.station.work.exchange;

import java.util.Collection;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers with a point or a comma. One mark with three digits behind it could part thousands: it is
 * read only where another number of the file proves what the mark means, or somebody said so.
 */
final class Numbers {

  private static final Pattern WHOLE = Pattern.compile("\\d+");
  private static final Pattern ONE_MARK = Pattern.compile("(\\d*)([.,])(\\d+)");
  private static final Pattern GROUPS =
      Pattern.compile("[1-9]\\d{0,2}(?:([.,])\\d{3})(?:\\1\\d{3})+");
  private static final Pattern BOTH =
      Pattern.compile("([1-9]\\d{0,2}(?:([.,])\\d{3})+)([.,])(\\d+)");
  private static final Pattern SPACED =
      Pattern.compile("[1-9]\\d{0,2}(?:[ '’\u00A0\u2009\u202F]\\d{3})+(?:[.,]\\d+)?");

  private final boolean comma;
  private final boolean point;
  private final String said;

  private Numbers(boolean comma, boolean point, String said) {
    this.comma = comma;
    this.point = point;
    this.said = said;
  }

  /** What the numbers of a file prove about its decimal mark, or what somebody said. */
  static Numbers of(Collection<String> cells, Optional<String> said) {
    return new Numbers(
        cells.stream().anyMatch(cell -> proves(cell, ',')),
        cells.stream().anyMatch(cell -> proves(cell, '.')),
        said.orElse(""));
  }

  private static boolean proves(String cell, char mark) {
    String digits = unsigned(cell);
    Matcher both = BOTH.matcher(digits);
    if (both.matches() && !both.group(2).equals(both.group(3))) {
      return both.group(3).charAt(0) == mark;
    }
    Matcher one = ONE_MARK.matcher(digits);
    return one.matches() && one.group(2).charAt(0) == mark && !couldBeThousands(one);
  }

  private static boolean couldBeThousands(Matcher one) {
    return one.group(3).length() == 3 && one.group(1).matches("[1-9]\\d{0,2}");
  }

  /**
   * A cell read as a number.
   *
   * @param plain with a decimal point; null where it is none
   * @param doubtful true where the mark could be another
   */
  record Read(@org.jspecify.annotations.Nullable String plain, boolean doubtful) {}

  Read read(String cell) {
    String digits = unsigned(cell);
    String sign = cell.strip().replace('\u2212', '-').startsWith("-") ? "-" : "";
    String plain = plain(digits);
    if (plain == null) {
      return new Read(null, false);
    }
    return plain.isEmpty() ? new Read(null, true) : new Read(sign + plain, false);
  }

  /** Null: no number. Empty: a number that could be read in two ways. */
  private @org.jspecify.annotations.Nullable String plain(String digits) {
    if (WHOLE.matcher(digits).matches()) {
      return digits;
    }
    if (SPACED.matcher(digits).matches()) {
      return plain(digits.replaceAll("[ '’\u00A0\u2009\u202F]", ""));
    }
    if (GROUPS.matcher(digits).matches()) {
      return digits.replaceAll("[.,]", "");
    }
    Matcher both = BOTH.matcher(digits);
    if (both.matches()) {
      return both.group(2).equals(both.group(3))
          ? null
          : both.group(1).replaceAll("[.,]", "") + "." + both.group(4);
    }
    Matcher one = ONE_MARK.matcher(digits);
    return one.matches() ? oneMark(one) : null;
  }

  private String oneMark(Matcher one) {
    String decimal = (one.group(1).isEmpty() ? "0" : one.group(1)) + "." + one.group(3);
    if (!couldBeThousands(one)) {
      return decimal;
    }
    boolean isComma = one.group(2).equals(",");
    if (!said.isEmpty()) {
      return isComma == said.equals("comma") ? decimal : one.group(1) + one.group(3);
    }
    boolean proven = isComma ? comma && !point : point && !comma;
    return proven ? decimal : "";
  }

  private static String unsigned(String cell) {
    return cell.strip().replace('\u2212', '-').replaceFirst("^[+-]\\s*", "");
  }
}
