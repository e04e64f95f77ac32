package org.siltbench.station.bench;

import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;

/**
 * Interrupts a thread again and again, at moments nobody chose, but never before the last interrupt
 * was found by it: one that is swallowed is missed in the end.
 */
final class Interrupter implements AutoCloseable {

  private final Thread victim = Thread.currentThread();
  private final AtomicInteger sent = new AtomicInteger();
  private final AtomicInteger found = new AtomicInteger();
  private final Thread thread;
  private volatile boolean ended;

  /** Interrupts the thread that makes it. */
  Interrupter(long seed) {
    Random random = new Random(seed);
    thread = new Thread(() -> live(random), "interrupter");
    thread.setDaemon(true);
    thread.start();
  }

  private void live(Random random) {
    while (!ended) {
      if (sent.get() == found.get()) {
        LockSupport.parkNanos(random.nextInt(400_000));
        sent.incrementAndGet();
        victim.interrupt();
      }
      Thread.onSpinWait();
    }
  }

  /** To be called by the victim; takes the interrupt it finds. */
  void look() {
    if (Thread.interrupted()) {
      found.incrementAndGet();
    }
  }

  /** How many were sent and how many of these were found. */
  int[] sentAndFound() {
    ended = true;
    try {
      boolean joined = false;
      while (!joined) {
        joined = joined();
      }
    } finally {
      look();
    }
    return new int[] {sent.get(), found.get()};
  }

  private boolean joined() {
    try {
      thread.join();
      return true;
    } catch (InterruptedException e) {
      found.incrementAndGet();
      return false;
    }
  }

  @Override
  public void close() {
    sentAndFound();
  }
}
