package org.siltbench.station.work.drying;

import java.time.Duration;
import java.util.Collection;
import org.siltbench.calc.method.Method;

/**
 * The clock of a cycle: the strictest of the methods in it.
 *
 * @param dry least time in the oven
 * @param cool least time in the desiccator
 * @param useful longest time in the desiccator
 */
record Times(Duration dry, Duration cool, Duration useful) {

  static Times of(Collection<Heated> filters, Purpose purpose) {
    Duration dry = Duration.ZERO;
    Duration cool = Duration.ZERO;
    Duration useful = Duration.ofDays(365);
    for (Heated one : filters) {
      Method method = one.method();
      dry = longer(dry, minutes(purpose.minutes(method, one.state())));
      cool = longer(cool, minutes(method.drying().coolMinutes()));
      Duration last = minutes(method.drying().usefulMinutes());
      useful = last.compareTo(useful) < 0 ? last : useful;
    }
    return new Times(dry, cool, useful);
  }

  private static Duration longer(Duration a, Duration b) {
    return a.compareTo(b) >= 0 ? a : b;
  }

  private static Duration minutes(double minutes) {
    return Duration.ofSeconds(Math.round(minutes * 60));
  }
}
