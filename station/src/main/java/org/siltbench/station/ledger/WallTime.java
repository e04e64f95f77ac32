package org.siltbench.station.ledger;

import static java.time.format.DateTimeFormatter.ISO_OFFSET_DATE_TIME;

import java.time.OffsetDateTime;

/**
 * The text of a time with offset, as ISO 8601 has it. The formatter of the library takes longer for
 * it than the whole rest of a line, so the common case is written directly; both say the same.
 */
final class WallTime {

  private WallTime() {}

  static void write(OffsetDateTime time, StringBuilder text) {
    int offset = time.getOffset().getTotalSeconds();
    int year = time.getYear();
    if (year < 1000 || year > 9999 || offset % 60 != 0) {
      ISO_OFFSET_DATE_TIME.formatTo(time, text);
      return;
    }
    text.append(year).append('-');
    two(time.getMonthValue(), text).append('-');
    two(time.getDayOfMonth(), text).append('T');
    two(time.getHour(), text).append(':');
    two(time.getMinute(), text).append(':');
    two(time.getSecond(), text);
    fraction(time.getNano(), text);
    offset(offset / 60, text);
  }

  private static StringBuilder two(int number, StringBuilder text) {
    return text.append((char) ('0' + number / 10)).append((char) ('0' + number % 10));
  }

  /** No more digits than it needs. */
  private static void fraction(int nano, StringBuilder text) {
    if (nano == 0) {
      return;
    }
    text.append('.');
    int left = nano;
    for (int place = 100_000_000; left > 0; place /= 10) {
      text.append((char) ('0' + left / place));
      left %= place;
    }
  }

  private static void offset(int minutes, StringBuilder text) {
    if (minutes == 0) {
      text.append('Z');
      return;
    }
    text.append(minutes < 0 ? '-' : '+');
    two(Math.abs(minutes) / 60, text).append(':');
    two(Math.abs(minutes) % 60, text);
  }
}
