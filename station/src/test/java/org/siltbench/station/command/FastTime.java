package org.siltbench.station.command;

import java.time.Duration;
import java.time.Instant;
import org.siltbench.balance.Timebase;

/** Wall time that runs faster by a factor, so that a balance on a real pty can be fast too. */
public final class FastTime implements Timebase {

  private final long factor;
  private final long zero = System.nanoTime();
  private final Instant start;

  public FastTime(long factor) {
    this(factor, Instant.now());
  }

  /** The same from another moment on. */
  public FastTime(long factor, Instant start) {
    this.factor = factor;
    this.start = start;
  }

  @Override
  public long nanos() {
    return (System.nanoTime() - zero) * factor;
  }

  @Override
  public Instant instant() {
    return start.plus(Duration.ofNanos(nanos()));
  }
}
