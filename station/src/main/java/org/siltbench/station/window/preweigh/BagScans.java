package org.siltbench.station.window.preweigh;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.work.preweigh.CloseBag;

/** Scans of closed bags, on their way from the screen's thread to the run's. */
final class BagScans implements CloseBag.Scans {

  private static final long WAIT_MILLIS = 20;

  private final BlockingQueue<String> scans = new LinkedBlockingQueue<>();
  private final Consumer<String> asked;
  private final Consumer<String> closed;
  private final Consumer<Problem.Refused> wrong;

  BagScans(Consumer<String> asked, Consumer<String> closed, Consumer<Problem.Refused> wrong) {
    this.asked = asked;
    this.closed = closed;
    this.wrong = wrong;
  }

  /** A bag was scanned. */
  void scanned(String text) {
    scans.add(text);
  }

  @Override
  public @Nullable String poll() {
    try {
      return scans.poll(WAIT_MILLIS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt(); // the pan's next reading ends the run
      return null;
    }
  }

  /** What was scanned before the bag was asked for was meant for another. */
  @Override
  public void asked(String filter) {
    scans.clear();
    asked.accept(filter);
  }

  @Override
  public void closed(String filter) {
    closed.accept(filter);
  }

  @Override
  public void wrong(Problem.Refused why) {
    wrong.accept(why);
  }
}
