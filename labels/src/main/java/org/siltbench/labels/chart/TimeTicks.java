package org.siltbench.labels.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/** Round moments along a span of time. */
final class TimeTicks {

  private static final List<Duration> STEPS =
      List.of(
          Duration.ofMinutes(5),
          Duration.ofMinutes(15),
          Duration.ofMinutes(30),
          Duration.ofHours(1),
          Duration.ofHours(2),
          Duration.ofHours(3),
          Duration.ofHours(6),
          Duration.ofHours(12),
          Duration.ofDays(1),
          Duration.ofDays(2),
          Duration.ofDays(7),
          Duration.ofDays(28),
          Duration.ofDays(91),
          Duration.ofDays(365));
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MM-dd");
  private static final DateTimeFormatter DAY_AND_CLOCK = DateTimeFormatter.ofPattern("MM-dd HH:mm");

  private TimeTicks() {}

  static List<OffsetDateTime> between(OffsetDateTime first, OffsetDateTime last, int most) {
    Duration step = step(Duration.between(first, last), most);
    ZoneOffset zone = first.getOffset();
    long shift = zone.getTotalSeconds();
    long seconds = step.toSeconds();
    long at = -Math.floorDiv(-(first.toEpochSecond() + shift), seconds) * seconds;
    List<OffsetDateTime> out = new ArrayList<>();
    while (at - shift <= last.toEpochSecond()) {
      out.add(Instant.ofEpochSecond(at - shift).atOffset(zone));
      at += seconds;
    }
    return out;
  }

  private static Duration step(Duration span, int most) {
    for (Duration step : STEPS) {
      if (span.dividedBy(step) <= most) {
        return step;
      }
    }
    return STEPS.get(STEPS.size() - 1).multipliedBy(Math.max(1, span.toDays() / 365 / most + 1));
  }

  /** The words under a tick: the day where the day changes, else the time. */
  static String text(OffsetDateTime tick, boolean first) {
    boolean midnight = tick.getHour() == 0 && tick.getMinute() == 0;
    if (first && !midnight) {
      return DAY_AND_CLOCK.format(tick);
    }
    return midnight ? DAY.format(tick) : CLOCK.format(tick);
  }
}
