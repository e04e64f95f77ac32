package org.siltbench.station.window;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.siltbench.balance.Timebase;
import org.siltbench.station.command.FastTime;

/**
 * A morning in May on which every test of the window begins, so that pictures show the same times
 * whenever they are taken. Time may run faster by a factor, and a test lets hours pass.
 */
public final class BenchTime implements Timebase {

  /** When it begins. */
  public static final Instant MORNING = Instant.parse("2026-05-28T07:00:00Z");

  private final FastTime time;
  private volatile Duration leapt = Duration.ZERO;

  public BenchTime(long factor) {
    this.time = new FastTime(factor, MORNING);
  }

  @Override
  public long nanos() {
    return time.nanos();
  }

  @Override
  public Instant instant() {
    return time.instant().plus(leapt);
  }

  /** The wall clock to it. */
  public Clock clock() {
    return withZone(ZoneOffset.UTC);
  }

  /** The oven dries, the desiccator cools, the water flows by. */
  public void pass(Duration hours) {
    leapt = leapt.plus(hours);
  }
}
