package org.siltbench.station.window;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.siltbench.balance.Timebase;

/**
 * A morning in May on which every test of the window begins, so that pictures show the same times
 * whenever they are taken. Time may run faster by a factor, and a test lets hours pass.
 */
public final class BenchTime implements Timebase {

  /** When it begins. */
  public static final Instant MORNING = Instant.parse("2026-05-28T07:00:00Z");

  private final long factor;
  private final long zero = System.nanoTime();
  private volatile Duration leapt = Duration.ZERO;

  public BenchTime(long factor) {
    this.factor = factor;
  }

  @Override
  public long nanos() {
    return (System.nanoTime() - zero) * factor;
  }

  @Override
  public Instant instant() {
    return MORNING.plusNanos(nanos()).plus(leapt);
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
