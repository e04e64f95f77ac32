package org.siltbench.station.work;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.siltbench.station.Problem;

/** Times that a person states: with an offset, or on the bench's own clock. */
public final class StatedTimes {

  private static final Duration CLOCK_SLACK = Duration.ofMinutes(10);

  private StatedTimes() {}

  /** Reads {@code 2026-05-14T09:45}, with blanks or a T between, with or without an offset. */
  public static Optional<OffsetDateTime> parse(String text, Clock clock) {
    String iso = text.strip().replaceFirst("(?<=\\d) +(?=\\d)", "T");
    try {
      return Optional.of(OffsetDateTime.parse(iso));
    } catch (DateTimeException noOffset) {
      return local(iso, clock);
    }
  }

  private static Optional<OffsetDateTime> local(String iso, Clock clock) {
    try {
      return Optional.of(LocalDateTime.parse(iso).atZone(clock.getZone()).toOffsetDateTime());
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** True if it lies ahead by more than clocks differ. */
  public static boolean inFuture(OffsetDateTime time, Clock clock) {
    return time.toInstant().isAfter(clock.instant().plus(CLOCK_SLACK));
  }

  /**
   * A time given with an option.
   *
   * @throws Problem.WrongUse if it is none or lies in the future
   */
  public static OffsetDateTime option(String option, String text, Clock clock) {
    OffsetDateTime time =
        parse(text, clock).orElseThrow(() -> new Problem.WrongUse(WorkSays.NO_TIME, option, text));
    if (inFuture(time, clock)) {
      throw new Problem.WrongUse(WorkSays.FUTURE, option, text);
    }
    return time;
  }
}
