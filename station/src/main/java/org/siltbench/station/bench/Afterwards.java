package org.siltbench.station.bench;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Does what can wait on a thread of its own, once nobody has asked for a turn for a moment: done at
 * once, it would stand in the way of the next question.
 */
final class Afterwards implements AutoCloseable {

  private static final long PAUSE = TimeUnit.MILLISECONDS.toNanos(3);

  private final Turns turns;
  private final Runnable work;
  private final Thread thread;
  private volatile boolean due;
  private volatile long since;
  private volatile boolean closed;

  Afterwards(String name, Turns turns, Runnable work) {
    this.turns = turns;
    this.work = work;
    this.thread = new Thread(this::live, name);
    thread.setDaemon(true);
    thread.start();
  }

  /** There is something to do, from now on. */
  void due() {
    since = System.nanoTime();
    if (!due) {
      due = true;
      LockSupport.unpark(thread);
    }
  }

  private void live() {
    while (!closed) {
      if (due) {
        rest();
      } else {
        LockSupport.park(this);
      }
    }
  }

  private void rest() {
    long left = since + PAUSE - System.nanoTime();
    if (left > 0) {
      LockSupport.parkNanos(this, left);
      return;
    }
    due = false;
    if (!done()) {
      due();
    }
  }

  /** Nobody waits for its failure, so the thread tells and goes on. */
  private boolean done() {
    try {
      return turns.callIfFree(work);
    } catch (RuntimeException | Error e) {
      thread.getUncaughtExceptionHandler().uncaughtException(thread, e);
      return true;
    }
  }

  @Override
  public void close() {
    closed = true;
    LockSupport.unpark(thread);
  }
}
