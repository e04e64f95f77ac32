package org.siltbench.balance;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;

/** Simulated time: it stands still until somebody moves it, and never goes back. */
public final class VirtualTime implements Timebase {

  private final Instant start;
  private final AtomicLong nanos = new AtomicLong();

  /** Time that begins at the given moment. */
  public VirtualTime(Instant start) {
    this.start = start;
  }

  @Override
  public long nanos() {
    return nanos.get();
  }

  @Override
  public Instant instant() {
    return start.plusNanos(nanos.get());
  }

  /** Moves time on: an hour in the oven passes in no time. */
  public void advance(Duration by) {
    if (by.isNegative()) {
      throw new IllegalArgumentException("time does not go back: " + by);
    }
    nanos.addAndGet(by.toNanos());
  }

  /** Moves time on to a count of nanoseconds; stays where it is if that is past. */
  public void advanceTo(long target) {
    nanos.accumulateAndGet(target, Math::max);
  }
}
