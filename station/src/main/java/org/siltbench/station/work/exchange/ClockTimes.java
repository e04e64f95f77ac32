package org.siltbench.station.work.exchange;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of day: 9:45, 09:45:30, 9h45, 9.45 Uhr, 9:45 pm. A bare 9.45 or 945 could be anything. */
final class ClockTimes {

  private static final Pattern TIME =
      Pattern.compile(
          "(\\d{1,2})(?::|\\s?h\\s?)(\\d{2})(?::(\\d{2})(?:\\.0+)?)?\\s*(?:(a|p)\\.?m\\.?|uhr|h|hrs)?");
  private static final Pattern GERMAN = Pattern.compile("(\\d{1,2})\\.(\\d{2})\\s*uhr");

  private ClockTimes() {}

  static Optional<LocalTime> read(String text) {
    String lower = text.strip().toLowerCase(Locale.ROOT);
    Matcher time = TIME.matcher(lower);
    if (time.matches()) {
      return of(time.group(1), time.group(2), time.group(3), time.group(4));
    }
    Matcher german = GERMAN.matcher(lower);
    return german.matches() ? of(german.group(1), german.group(2), null, null) : Optional.empty();
  }

  private static Optional<LocalTime> of(
      String hour,
      String minute,
      @org.jspecify.annotations.Nullable String second,
      @org.jspecify.annotations.Nullable String half) {
    try {
      int h = Integer.parseInt(hour);
      if (half != null) {
        if (h < 1 || h > 12) {
          return Optional.empty();
        }
        h = h % 12 + (half.equals("p") ? 12 : 0);
      }
      int s = second == null ? 0 : Integer.parseInt(second);
      return Optional.of(LocalTime.of(h, Integer.parseInt(minute), s));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
