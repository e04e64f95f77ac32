package org.siltbench.station.window.desk;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.siltbench.station.Problem;

/** Runs bench work off the screen's thread and brings the answer back to it. */
public final class Work {

  private final Executor bench;
  private final Executor screen;
  private final Consumer<Problem> usual;
  private volatile boolean closed;

  /**
   * Work over two executors; a test gives the same thread twice.
   *
   * @param bench one thread for bench work
   * @param screen the screen's thread
   * @param usual told of a problem where the caller does not say otherwise
   */
  public Work(Executor bench, Executor screen, Consumer<Problem> usual) {
    this.bench = bench;
    this.screen = screen;
    this.usual = usual;
  }

  /** Does the job on the bench's thread; what it answers comes on the screen's. */
  public <T> void run(Supplier<T> job, Consumer<? super T> then) {
    run(job, then, usual);
  }

  /** The same, with another way to tell of a problem. */
  public <T> void run(
      Supplier<T> job, Consumer<? super T> then, Consumer<? super Problem> otherwise) {
    if (closed) {
      return; // nobody is there any more to be shown an answer
    }
    bench.execute(
        () -> {
          try {
            T answer = job.get();
            screen.execute(() -> then.accept(answer));
          } catch (Problem e) {
            screen.execute(() -> otherwise.accept(e));
          } catch (RuntimeException e) {
            screen.execute(() -> otherwise.accept(unexpected(e)));
          }
        });
  }

  /** The window closes: what is asked from now on is not done. */
  public void close() {
    closed = true;
  }

  /** Does something on the screen's thread, later. */
  public void onScreen(Runnable what) {
    screen.execute(what);
  }

  /** A fault of the program, told as what it is. */
  public static Problem.Outside unexpected(RuntimeException e) {
    return new Problem.Outside(e, DeskSays.UNEXPECTED, e);
  }
}
