package org.siltbench.station.window.look;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.siltbench.station.window.desk.Texts;

/** Times as the bench reads them: the hour of today, the day with it otherwise; spans in words. */
public final class Moments {

  private final Texts texts;
  private final Clock clock;
  private final DateTimeFormatter hour;
  private final DateTimeFormatter day;

  /** Times on a clock, in a language. */
  public Moments(Clock clock, Locale locale) {
    this.texts = Texts.of(Moments.class, locale);
    this.clock = clock;
    this.hour = DateTimeFormatter.ofPattern("HH:mm", locale);
    this.day = DateTimeFormatter.ofPattern("d MMM HH:mm", locale);
  }

  /** A time. */
  public String at(OffsetDateTime time) {
    ZonedDateTime here = time.atZoneSameInstant(clock.getZone());
    return here.format(here.toLocalDate().equals(LocalDate.now(clock)) ? hour : day);
  }

  /** A span, its minutes rounded up: nothing is let go too early. */
  public String span(Duration span) {
    long minutes = Math.max(0, span.plusSeconds(59).toMinutes());
    return minutes < 60
        ? texts.get("span.minutes", minutes)
        : texts.get("span.hours", minutes / 60, minutes % 60);
  }
}
