package org.siltbench.balance.link;

import org.siltbench.balance.Timebase;
import org.siltbench.balance.VirtualTime;

/** Holds simulated time back until the wall clock allows it. */
public interface Pacer {

  /** Lets simulated time run as it will. */
  Pacer UNPACED = (target, giveUp) -> {};

  /** Told whether to stop waiting. */
  interface GiveUp {
    /** True once waiting makes no sense any more. */
    boolean now();
  }

  /** Waits until the simulated moment, on its monotonic count, has come. */
  void await(long targetNanos, GiveUp giveUp) throws InterruptedException;

  /** So many simulated seconds in one second of the wall clock. */
  static Pacer of(Timebase wall, VirtualTime simulated, double speed) {
    long wallStart = wall.nanos();
    long start = simulated.nanos();
    return (target, giveUp) -> {
      long due = wallStart + (long) ((target - start) / speed);
      for (long left = due - wall.nanos(); left > 0; left = due - wall.nanos()) {
        if (giveUp.now()) {
          return;
        }
        Thread.sleep(Math.min(50, left / 1_000_000), (int) (left % 1_000_000));
      }
    };
  }
}
