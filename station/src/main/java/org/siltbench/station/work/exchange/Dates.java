package org.siltbench.station.work.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates in figures or with a month's name. In which order day, month and year stand is told by a
 * date that fits one order only, by the heading, or by a person; never by habit.
 */
final class Dates {

  /** The order of day, month and year. */
  enum Order {
    DAY_FIRST("day-first"),
    MONTH_FIRST("month-first"),
    YEAR_FIRST("year-first");

    private final String word;

    Order(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
  private static final Pattern FIGURES =
      Pattern.compile("(\\d{1,2})\\s?[./-]\\s?(\\d{1,2})\\s?[./-]\\s?(\\d{4}|\\d{2})");
  private static final Pattern DAY_NAMED =
      Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)?[.\\s-]*(\\p{L}+)[.,\\s-]*(\\d{4})");
  private static final Pattern NAMED_DAY =
      Pattern.compile("(\\p{L}+)\\.?\\s+(\\d{1,2})(?:st|nd|rd|th)?,?\\s+(\\d{4})");
  private static final Pattern TOLD =
      Pattern.compile(
          "(?i)\\b(dd?|tt?|jj?|mm?|yy(?:yy)?|aaaa|jjjj)[./-](dd?|tt?|jj?|mm?)[./-](dd?|yyyy|yy|jjjj|jj|aaaa|aa)\\b");

  private static final Map<String, Integer> MONTHS = new HashMap<>();

  static {
    List<String> names =
        List.of(
            "jan january januar janvier janv enero ene",
            "feb february februar fevrier fevr febrero",
            "mar march marz mrz mars marzo",
            "apr april avril avr abril abr",
            "may mai mayo",
            "jun june juni juin junio",
            "jul july juli juillet juil julio",
            "aug august aout agosto ago",
            "sep sept september septembre septiembre",
            "oct october okt oktober octobre octubre",
            "nov november novembre noviembre",
            "dec december dez dezember decembre diciembre dic");
    for (int i = 0; i < names.size(); i++) {
      for (String name : names.get(i).split(" ")) {
        MONTHS.put(name, i + 1);
      }
    }
  }

  private final Set<Order> orders;

  private Dates(Set<Order> orders) {
    this.orders = orders;
  }

  /**
   * The orders that fit every date of a file.
   *
   * @param cells all dates
   * @param headings their headings, which may tell the order
   * @param said what somebody said
   */
  static Dates of(Collection<String> cells, Collection<String> headings, Optional<String> said) {
    Set<Order> left = EnumSet.allOf(Order.class);
    said.ifPresent(word -> left.removeIf(order -> !order.word().equals(word)));
    headings.forEach(heading -> told(heading).ifPresent(order -> left.retainAll(Set.of(order))));
    for (String cell : cells) {
      Matcher figures = FIGURES.matcher(cell.strip().replaceFirst("\\.$", ""));
      if (figures.matches()) {
        left.removeIf(order -> date(figures, order).isEmpty());
      }
    }
    return new Dates(left);
  }

  private static Optional<Order> told(String heading) {
    Matcher told = TOLD.matcher(heading);
    if (!told.find()) {
      return Optional.empty();
    }
    String first = told.group(1).toLowerCase(Locale.ROOT);
    if (first.startsWith("m")) {
      return Optional.of(Order.MONTH_FIRST);
    }
    boolean year = first.length() == 4 || first.startsWith("y");
    return Optional.of(year ? Order.YEAR_FIRST : Order.DAY_FIRST);
  }

  /** The orders still possible. */
  Set<Order> orders() {
    return orders;
  }

  /** True if a text is a date in figures whose order matters. */
  static boolean isFigures(String text) {
    return FIGURES.matcher(text.strip().replaceFirst("\\.$", "")).matches();
  }

  /** True if a text looks like a date at all. */
  static boolean isDate(String text) {
    String bare = text.strip().replaceFirst("\\.$", "");
    return isFigures(text) || ISO.matcher(bare).matches() || named(bare).isPresent();
  }

  /** The date; empty where it is none, or where its order is still open. */
  Optional<LocalDate> read(String text) {
    String bare = text.strip().replaceFirst("\\.$", "");
    Matcher iso = ISO.matcher(bare);
    if (iso.matches()) {
      return day(iso.group(1), iso.group(2), iso.group(3));
    }
    Matcher figures = FIGURES.matcher(bare);
    if (figures.matches()) {
      return orders.size() == 1 ? date(figures, orders.iterator().next()) : Optional.empty();
    }
    return named(bare);
  }

  private static Optional<LocalDate> named(String text) {
    Matcher first = DAY_NAMED.matcher(text);
    if (first.matches()) {
      return month(first.group(2)).flatMap(m -> day(first.group(3), m, first.group(1)));
    }
    Matcher then = NAMED_DAY.matcher(text);
    return then.matches()
        ? month(then.group(1)).flatMap(m -> day(then.group(3), m, then.group(2)))
        : Optional.empty();
  }

  private static Optional<String> month(String name) {
    return Optional.ofNullable(MONTHS.get(Columns.plain(name))).map(m -> Integer.toString(m));
  }

  private static Optional<LocalDate> date(Matcher figures, Order order) {
    String a = figures.group(1);
    String b = figures.group(2);
    String c = figures.group(3);
    return switch (order) {
      case DAY_FIRST -> day(year(c), b, a);
      case MONTH_FIRST -> day(year(c), a, b);
      case YEAR_FIRST -> c.length() == 4 || a.length() != 2 ? Optional.empty() : day(year(a), b, c);
    };
  }

  private static String year(String digits) {
    return digits.length() == 2 ? "20" + digits : digits;
  }

  private static Optional<LocalDate> day(String year, String month, String day) {
    try {
      return Optional.of(
          LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
