package org.siltbench.balance.link;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.MassUnit;
import org.siltbench.calc.reason.Unfit;

/**
 * The keys that any link may carry.
 *
 * @param format a saved format's name or a file's path, or null for the default format
 * @param unit the unit to expect, and to supply where the line has none, or null
 * @param ask text to send for each reading, or null to listen only
 * @param every time between two askings
 * @param speed how many simulated seconds pass in one; null runs in step, as fast as it is read
 */
public record SpecOptions(
    @Nullable String format,
    @Nullable String unit,
    @Nullable String ask,
    Duration every,
    @Nullable Double speed) {

  private static final Duration SHORTEST = Duration.ofMillis(20);
  private static final Duration LONGEST = Duration.ofHours(1);
  private static final double FASTEST = 10_000;

  /** Half a second. */
  public static final Duration EVERY = Duration.ofMillis(500);

  /** No key given. */
  public static final SpecOptions NONE = new SpecOptions(null, null, null, EVERY, null);

  /** Refuses a rate or speed that makes no sense. */
  public SpecOptions {
    if (every.compareTo(SHORTEST) < 0 || every.compareTo(LONGEST) > 0) {
      throw new Unfit(SpecSays.EVERY);
    }
    if (speed != null && !(speed > 0 && speed <= FASTEST)) {
      throw new Unfit(SpecSays.SPEED);
    }
    if (unit != null && MassUnit.ofSymbol(unit).isEmpty()) {
      throw new Unfit(SpecSays.UNIT, unit);
    }
  }

  /** The same with a format. */
  public SpecOptions withFormat(@Nullable String name) {
    return new SpecOptions(name, unit, ask, every, speed);
  }

  /** The same with a unit to expect. */
  public SpecOptions withUnit(@Nullable String expected) {
    return new SpecOptions(format, expected, ask, every, speed);
  }

  /** The same with a speed of simulated time. */
  public SpecOptions withSpeed(@Nullable Double times) {
    return new SpecOptions(format, unit, ask, every, times);
  }

  /** The same with a text to send for each reading. */
  public SpecOptions withAsk(@Nullable String text) {
    return new SpecOptions(format, unit, text, every, speed);
  }
}
