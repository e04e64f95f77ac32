package org.siltbench.station.work;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;

/** Numbers and times as a person types them into a field; blank means nothing was said. */
public final class Typed {

  private static final int LONGEST = 30;

  private Typed() {}

  /**
   * A decimal number; a comma counts as its point.
   *
   * @param what what the field is called, for the message
   * @return null for blank
   */
  public static @Nullable BigDecimal decimal(String what, String text) {
    String bare = text.strip().replace(',', '.').replace('−', '-');
    if (bare.isEmpty()) {
      return null;
    }
    if (bare.length() > LONGEST || !bare.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)")) {
      throw new Problem.WrongUse(WorkSays.NO_NUMBER, what, shown(text));
    }
    return new BigDecimal(bare);
  }

  /** A number that must be there. */
  public static BigDecimal required(String what, String text) {
    BigDecimal number = decimal(what, text);
    if (number == null) {
      throw new Problem.WrongUse(WorkSays.MISSING, what);
    }
    return number;
  }

  /** A whole number within bounds, both included; blank counts as the usual one. */
  public static int whole(String what, String text, int usual, int least, int most) {
    BigDecimal number = decimal(what, text);
    if (number == null) {
      return usual;
    }
    boolean fits =
        number.stripTrailingZeros().scale() <= 0
            && number.compareTo(BigDecimal.valueOf(least)) >= 0
            && number.compareTo(BigDecimal.valueOf(most)) <= 0;
    if (!fits) {
      throw new Problem.WrongUse(WorkSays.NOT_WHOLE, what, shown(text), least, most);
    }
    return number.intValueExact();
  }

  /**
   * A time that has passed: a date and time, or an hour of today.
   *
   * @return null for blank, which means now
   */
  public static @Nullable OffsetDateTime past(String what, String text, Clock clock) {
    String bare = text.strip();
    if (bare.isEmpty()) {
      return null;
    }
    return StatedTimes.option(what, ofToday(bare, clock), clock);
  }

  /** A calendar day; null for blank. */
  public static @Nullable LocalDate day(String what, String text) {
    try {
      return text.isBlank() ? null : LocalDate.parse(text.strip());
    } catch (DateTimeException e) {
      throw new Problem.WrongUse(WorkSays.NO_DATE, what, shown(text));
    }
  }

  /** Text as it is; null for blank. */
  public static @Nullable String text(String text) {
    return text.isBlank() ? null : text.strip();
  }

  private static String ofToday(String text, Clock clock) {
    String hour = text.length() == 4 ? "0" + text : text;
    try {
      return LocalDate.now(clock).atTime(LocalTime.parse(hour)).toString();
    } catch (DateTimeException noHour) {
      return text;
    }
  }

  private static String shown(String text) {
    String line = text.strip();
    return line.length() > 40 ? line.substring(0, 40) + "…" : line;
  }
}
