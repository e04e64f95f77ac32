package org.siltbench.station.work;

import java.time.Duration;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.siltbench.station.Problem;

/** Spans of time as people write them. */
public final class Spans {

  private static final Pattern SPAN = Pattern.compile("(\\d{1,6})\\s*(s|m|min|h|d)");

  private Spans() {}

  /**
   * A span: {@code 30s}, {@code 15m}, {@code 6h}, {@code 2d}.
   *
   * @throws Problem.WrongUse if it is none
   */
  public static Duration parse(String text) {
    Matcher span = SPAN.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!span.matches()) {
      throw new Problem.WrongUse(WorkSays.NO_SPAN, text);
    }
    long count = Long.parseLong(span.group(1));
    return switch (span.group(2)) {
      case "s" -> Duration.ofSeconds(count);
      case "h" -> Duration.ofHours(count);
      case "d" -> Duration.ofDays(count);
      default -> Duration.ofMinutes(count);
    };
  }
}
