package org.siltbench.station.work.exchange;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Date and time in one cell or in two. */
final class Moments {

  private static final Pattern ISO =
      Pattern.compile("\\d{4}-\\d{2}-\\d{2}[T ]\\d{2}:\\d{2}(:\\d{2})?(Z|[+-]\\d{2}:\\d{2})?");
  private static final Pattern PARTS =
      Pattern.compile(
          "(?i)(.*?[\\p{L}\\d.])(?:\\s*,\\s*|\\s+um\\s+|\\s+à\\s+|\\s+at\\s+|\\s+|T)(\\d{1,2}\\s?[:hH]\\s?\\d{2}.*|\\d{1,2}\\.\\d{2}\\s*[uU]hr)");
  private static final DateTimeFormatter SHOWN =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss");

  private final Dates dates;

  Moments(Dates dates) {
    this.dates = dates;
  }

  /** The date's part of a cell with or without a time; the cell itself where it has no time. */
  static String datePart(String cell) {
    Matcher parts = PARTS.matcher(cell.strip());
    return parts.matches() ? parts.group(1) : cell.strip();
  }

  /**
   * A cell as the receipt table writes it.
   *
   * @param day the day of the line, where the cell has a time only
   * @return empty where it is no moment, or is doubtful
   */
  Optional<String> read(String cell, Optional<LocalDate> day) {
    String text = cell.strip();
    if (ISO.matcher(text).matches()) {
      return Optional.of(text.replace(' ', 'T'));
    }
    Optional<LocalTime> only = ClockTimes.read(text);
    if (only.isPresent()) {
      return day.map(d -> shown(d, only.get()));
    }
    Matcher parts = PARTS.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    Optional<LocalDate> date = dates.read(parts.group(1));
    return date.flatMap(d -> ClockTimes.read(parts.group(2)).map(time -> shown(d, time)));
  }

  static String shown(LocalDate day, LocalTime time) {
    String text = SHOWN.format(LocalDateTime.of(day, time));
    return text.endsWith(":00") ? text.substring(0, text.length() - 3) : text;
  }
}
