package org.siltbench.station.window.postweigh;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.work.postweigh.Ids;

/**
 * Scans on their way from the screen's thread to the run's. One is taken only after it was asked
 * for, with the pan back at zero: so no mass can go to another filter's ID.
 */
final class PostScans implements Ids {

  private static final long WAIT_MILLIS = 20;

  private final BlockingQueue<Answer> answers = new LinkedBlockingQueue<>();
  private final Runnable asking;
  private volatile boolean asked;

  PostScans(Runnable asking) {
    this.asking = asking;
  }

  /** A bag was scanned; false if it was not asked for. */
  synchronized boolean scanned(String text) {
    if (!asked) {
      return false;
    }
    asked = false;
    answers.add(Answer.of(text));
    return true;
  }

  /** No more will be scanned. */
  void end() {
    answers.add(Answer.END);
  }

  @Override
  public void ask() {
    asked = true;
    asking.run();
  }

  @Override
  public @Nullable Answer poll() {
    try {
      return answers.poll(WAIT_MILLIS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt(); // the pan's next reading ends the run
      return null;
    }
  }
}
