package org.siltbench.station.bench;

import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/**
 * Lets one thread at a time to a bench's files and register; the others wait, in the order in which
 * they came. The work is done on the caller's own thread: to hand it to another one and wait would
 * take longer than most of the work. Interrupting the caller neither ends the wait nor the work.
 */
final class Turns {

  private final ReentrantLock lock = new ReentrantLock(true);
  private boolean closed;

  boolean isCurrent() {
    return lock.isHeldByCurrentThread();
  }

  /** Does the work when its turn has come; at once if this thread has the turn already. */
  <T> T call(Supplier<T> work) {
    lock.lock();
    try {
      if (closed) {
        throw new IllegalStateException("the bench is closed");
      }
      return work.get();
    } finally {
      lock.unlock();
    }
  }

  /** Does work that can wait, unless somebody has the turn or waits for it; false if so. */
  boolean callIfFree(Runnable work) {
    if (lock.hasQueuedThreads() || !lock.tryLock()) {
      return false;
    }
    try {
      if (!closed) {
        work.run();
      }
      return true;
    } finally {
      lock.unlock();
    }
  }

  /** The last turn; answers false if it was taken before. */
  boolean close(Runnable last) {
    lock.lock();
    try {
      if (closed) {
        return false;
      }
      last.run();
      closed = true;
      return true;
    } finally {
      lock.unlock();
    }
  }
}
