package org.siltbench.station.window;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.Executor;

/** A way to a thread that is not ready yet: what comes before it is opened waits, in its order. */
final class Gate implements Executor {

  private final Executor beyond;
  private final Queue<Runnable> early = new ArrayDeque<>();
  private boolean open;

  Gate(Executor beyond) {
    this.beyond = beyond;
  }

  @Override
  public synchronized void execute(Runnable what) {
    if (open) {
      beyond.execute(what);
    } else {
      early.add(what);
    }
  }

  /** From now on everything goes through. */
  synchronized void open() {
    open = true;
    early.forEach(beyond::execute);
    early.clear();
  }
}
