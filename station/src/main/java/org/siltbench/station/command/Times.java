package org.siltbench.station.command;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.work.Spans;

/** Reads times and durations as people give them. */
public final class Times {

  private Times() {}

  /**
   * A moment that has passed: ISO 8601 with offset, or a local date and time in the bench's zone.
   * Null stays null.
   *
   * @throws Problem.WrongUse if it is no time, or lies in the future
   */
  public static @Nullable OffsetDateTime past(@Nullable String text, Clock clock) {
    if (text == null) {
      return null;
    }
    OffsetDateTime time = moment(text, clock.getZone());
    if (time.isAfter(OffsetDateTime.now(clock).plusMinutes(1))) {
      throw new Problem.WrongUse(
          "The time " + text + " lies in the future.", "Check date, hour and zone.");
    }
    return time;
  }

  /** A moment, past or future. */
  public static OffsetDateTime moment(String text, ZoneId zone) {
    String bare = text.strip().replace(' ', 'T');
    try {
      return OffsetDateTime.parse(bare);
    } catch (DateTimeException withoutOffset) {
      try {
        return LocalDateTime.parse(bare).atZone(zone).toOffsetDateTime();
      } catch (DateTimeException e) {
        throw new Problem.WrongUse(
            "\"" + text + "\" is no time.",
            "Write 2026-11-25T14:30 (local) or 2026-11-25T14:30+01:00.");
      }
    }
  }

  /** A span: {@code 30s}, {@code 15m}, {@code 6h}, {@code 2d}. */
  public static Duration span(String text) {
    return Spans.parse(text);
  }
}
