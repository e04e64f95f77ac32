package org.siltbench.station.bench;

import java.util.function.BooleanSupplier;

/**
 * Short waits without sleep, which saves the time that waking takes, but only where a processor is
 * to spare: a thread that waits awake beside others is made to wait longer for its turn. Such a
 * thread notices that it was not running for a while, and the next waits are then slept through.
 */
final class Watch {

  private static final boolean SPARE_CORE = Runtime.getRuntime().availableProcessors() > 1;
  private static final long LONGEST = 1_000_000;
  private static final long PUSHED_ASIDE = 40_000;
  private static final int ASLEEP = 200;

  private volatile int asleep;

  /** Waits at most a millisecond; the caller sleeps on if it has not happened by then. */
  void awaitAwake(BooleanSupplier happened) {
    int left = asleep;
    if (left > 0) {
      asleep = left - 1; // a count lost between threads does no harm
      return;
    }
    long start = System.nanoTime();
    long last = start;
    while (SPARE_CORE && !happened.getAsBoolean() && last - start < LONGEST) {
      Thread.onSpinWait();
      long now = System.nanoTime();
      if (now - last > PUSHED_ASIDE) {
        asleep = ASLEEP;
        return;
      }
      last = now;
    }
  }
}
