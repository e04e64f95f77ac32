package org.siltbench.station.bench;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The one thread that touches a bench's files. Nobody interrupts it: an interrupt would close a
 * file under the ledger and the register. Callers wait for it even when they are interrupted.
 */
final class BenchThread implements AutoCloseable {

  /**
   * What can wait starts after a pause: started at once, it would keep the caller from its answer.
   */
  private static final long PAUSE = 3;

  private static final Runnable END = new Mark("no work will come any more");
  private static final Runnable NOTHING = new Mark("nothing can wait");

  /** Stands for work where there is none. */
  private record Mark(String meaning) implements Runnable {
    @Override
    public void run() {}
  }

  private final BlockingQueue<Runnable> queue = new LinkedBlockingQueue<>();
  private final Watch workWatch = new Watch();
  private final Watch answerWatch = new Watch();
  private final Thread thread;
  private Runnable later = NOTHING;
  private boolean closed;

  BenchThread(String name) {
    this.thread = new Thread(this::live, name);
    thread.setDaemon(true);
    thread.start();
  }

  private void live() {
    Runnable work = next();
    while (work != END) {
      done(work);
      work = next();
    }
  }

  /** Does one piece; nobody waits for its failure, so the thread tells and goes on. */
  private void done(Runnable work) {
    try {
      work.run();
    } catch (RuntimeException | Error e) {
      thread.getUncaughtExceptionHandler().uncaughtException(thread, e);
    }
  }

  /**
   * Work seldom comes alone: a question about the filter, then the act. A thread that has fallen
   * asleep in between is woken late, so it stays awake for a moment.
   */
  private Runnable next() {
    workWatch.awaitAwake(() -> !queue.isEmpty());
    while (true) {
      try {
        Runnable work = later == NOTHING ? queue.take() : queue.poll(PAUSE, TimeUnit.MILLISECONDS);
        if (work != null) {
          return work;
        }
        Runnable waiting = later;
        later = NOTHING;
        done(waiting);
      } catch (InterruptedException e) {
        throw new IllegalStateException("nobody interrupts the thread of a bench", e);
      }
    }
  }

  boolean isCurrent() {
    return Thread.currentThread() == thread;
  }

  /** Does the work there and waits for its answer; directly if this is the thread. */
  <T> T call(Supplier<T> work) {
    return isCurrent() ? work.get() : ask(answer -> answer.complete(work.get()), NOTHING);
  }

  /**
   * Does work there that gives its answer as soon as it has it, and may go on after it.
   *
   * @param afterwards done there when no more work has come for a moment
   */
  <T> T ask(Consumer<CompletableFuture<T>> work, Runnable afterwards) {
    CompletableFuture<T> answer = new CompletableFuture<>();
    start(
        () -> {
          try {
            work.accept(answer);
          } catch (RuntimeException | Error e) {
            answer.completeExceptionally(e);
          }
          later = afterwards == NOTHING ? later : afterwards;
        });
    return await(answer);
  }

  private synchronized void start(Runnable work) {
    if (closed) {
      throw new IllegalStateException("the bench is closed");
    }
    queue.add(work);
  }

  /** Most answers come within the time that a disk takes. */
  private <T> T await(CompletableFuture<T> answer) {
    answerWatch.awaitAwake(answer::isDone);
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return answer.get();
        } catch (InterruptedException e) {
          interrupted = true;
        }
      }
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw (RuntimeException) e.getCause();
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  synchronized boolean isClosed() {
    return closed;
  }

  @Override
  public synchronized void close() {
    closed = true;
    queue.add(END);
  }
}
