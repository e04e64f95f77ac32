package org.siltbench.station.window;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;

/** The window's threads, each for one kind of work. */
record Threads(
    ExecutorService bench,
    ExecutorService printing,
    ExecutorService runs,
    ExecutorService live,
    ExecutorService sound)
    implements AutoCloseable {

  Threads() {
    this(
        Executors.newSingleThreadExecutor(named("bench work")),
        Executors.newSingleThreadExecutor(named("printing")),
        Executors.newSingleThreadExecutor(named("weighing")),
        Executors.newCachedThreadPool(named("balance or scanner")),
        Executors.newSingleThreadExecutor(named("sound")));
  }

  private static ThreadFactory named(String name) {
    return work -> {
      Thread thread = new Thread(work, name);
      thread.setDaemon(true);
      return thread;
    };
  }

  @Override
  public void close() {
    runs.shutdownNow();
    live.shutdownNow();
    sound.shutdownNow();
    printing.shutdown();
    bench.shutdown();
  }
}
