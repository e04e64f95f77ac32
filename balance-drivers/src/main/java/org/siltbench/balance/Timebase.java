package org.siltbench.balance;

import java.time.Instant;
import java.time.InstantSource;

/**
 * The clock everybody around one balance looks at: wall time for real links, simulated time for the
 * practice balance and for replays. {@link InstantSource#withZone} makes a {@link java.time.Clock}
 * of it.
 */
public interface Timebase extends InstantSource {

  /** A monotonic count of nanoseconds; only differences mean something. */
  long nanos();

  /** The machine's own clocks. */
  static Timebase system() {
    return new Timebase() {
      @Override
      public long nanos() {
        return System.nanoTime();
      }

      @Override
      public Instant instant() {
        return InstantSource.system().instant();
      }
    };
  }
}
