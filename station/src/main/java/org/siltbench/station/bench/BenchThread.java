package org.siltbench.station.bench;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The one thread that touches a bench's files. Nobody interrupts it: an interrupt would close a
 * file under the ledger and the register. Callers wait for it even when they are interrupted.
 */
final class BenchThread implements AutoCloseable {

  private static final boolean SPARE_CORE = Runtime.getRuntime().availableProcessors() > 1;
  private static final long AWAKE = 1_000_000;

  private final ExecutorService executor;
  private volatile @Nullable Thread thread;

  BenchThread(String name) {
    executor =
        Executors.newSingleThreadExecutor(
            work -> {
              Thread fresh = new Thread(work, name);
              fresh.setDaemon(true);
              thread = fresh;
              return fresh;
            });
  }

  boolean isCurrent() {
    return Thread.currentThread() == thread;
  }

  /** Does the work there and waits for its answer; directly if this is the thread. */
  <T> T call(Supplier<T> work) {
    return isCurrent() ? work.get() : call(work, () -> {});
  }

  /** The same, with something to do there after the answer was given. */
  <T> T call(Supplier<T> work, Runnable afterwards) {
    CompletableFuture<T> answer = new CompletableFuture<>();
    start(
        () -> {
          try {
            answer.complete(work.get());
          } catch (RuntimeException | Error e) {
            answer.completeExceptionally(e);
          }
          afterwards.run();
        });
    return await(answer);
  }

  private void start(Runnable work) {
    try {
      executor.execute(work);
    } catch (RejectedExecutionException e) {
      throw new IllegalStateException("the bench is closed", e);
    }
  }

  /**
   * Most answers come within the time that a disk takes. A thread that sleeps meanwhile may have to
   * wait for the work done after the answer before it is woken, so it stays awake for a moment.
   */
  private static void stayAwake(CompletableFuture<?> answer) {
    long start = System.nanoTime();
    while (SPARE_CORE && !answer.isDone() && System.nanoTime() - start < AWAKE) {
      Thread.onSpinWait();
    }
  }

  private static <T> T await(CompletableFuture<T> answer) {
    stayAwake(answer);
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

  boolean isClosed() {
    return executor.isShutdown();
  }

  @Override
  public void close() {
    executor.shutdown();
  }
}
