package org.siltbench.station.command.prepare;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;

/** Reads calendar days. */
final class Dates {

  private Dates() {}

  static @Nullable LocalDate day(@Nullable String text) {
    try {
      return text == null ? null : LocalDate.parse(text.strip());
    } catch (DateTimeException e) {
      throw new Problem.WrongUse("\"" + text + "\" is no date.", "Write 2026-11-25.");
    }
  }
}
