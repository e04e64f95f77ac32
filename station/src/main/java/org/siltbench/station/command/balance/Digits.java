package org.siltbench.station.command.balance;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.station.work.connect.LessonWords;

/** Writes readings as JSON has them. */
final class Digits {

  private Digits() {}

  /** The mass in grams with the digits the balance showed, or null if the line has none. */
  static @Nullable String grams(@Nullable Reading reading) {
    return LessonWords.grams(reading);
  }

  /** True for stable, false for moving, null where the balance has no mark. */
  static @Nullable Boolean stable(@Nullable Reading reading) {
    if (reading == null || reading.mark() == Reading.Mark.NONE) {
      return null;
    }
    return reading.mark() == Reading.Mark.STABLE;
  }

  /** A reading's fields. */
  static Map<String, @Nullable Object> fields(String text, @Nullable Reading reading) {
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("text", text);
    out.put("mass_g", grams(reading));
    out.put("unit", reading == null || reading.unit().isEmpty() ? null : reading.unit());
    out.put("stable", stable(reading));
    return out;
  }
}
