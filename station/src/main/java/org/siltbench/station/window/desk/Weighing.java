package org.siltbench.station.window.desk;

import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.work.live.LiveBalance;
import org.siltbench.station.work.weigh.Patience;
import org.siltbench.station.work.weigh.Scale;
import org.siltbench.station.work.weigh.WeighEvent;

/**
 * The one run that may use the pan at a time: a pre-weighing, a post-weighing, a check. It goes on
 * when another screen comes in front; only its end or its stop ends it.
 */
public final class Weighing {

  /** A bench waits for a cable as long as a shift. */
  private static final Patience SHIFT = Patience.USUAL.endingAfter(Duration.ofHours(12));

  /** What runs over the scale, on a thread of its own. */
  public interface Body {
    /** Runs; an interrupt stops it between two readings. */
    void run(Scale scale) throws InterruptedException;
  }

  /** How a screen hears of its run; all on the screen's thread. */
  public interface Listener {
    /** Something happened at the pan. */
    void happened(WeighEvent event);

    /** It is over; the problem says why where it did not end by itself. */
    void ended(@Nullable Problem problem);
  }

  private final ExecutorService thread;
  private final Work work;
  private final Consumer<WeighEvent> strip;
  private Consumer<WeighEvent> told = event -> {};
  private final ReadOnlyStringWrapper running = new ReadOnlyStringWrapper("");
  private @Nullable Future<?> current;

  /**
   * Runs on the given thread.
   *
   * @param strip sees every event too, on the run's thread
   */
  public Weighing(ExecutorService thread, Work work, Consumer<WeighEvent> strip) {
    this.thread = thread;
    this.work = work;
    this.strip = strip;
  }

  /** Somebody who hears of every run on the screen's thread, before its own screen does. */
  public void told(Consumer<WeighEvent> listener) {
    told = listener;
  }

  /** The screen whose run it is; empty while the pan is free. */
  public ReadOnlyStringProperty running() {
    return running.getReadOnlyProperty();
  }

  /**
   * Starts a run.
   *
   * @param screen whose run it is
   * @throws Problem.Refused if another run has the pan
   */
  public void start(
      String screen,
      Bench bench,
      LiveBalance balance,
      PanSettings pans,
      Body body,
      Listener listener) {
    if (!running.get().isEmpty()) {
      throw new Problem.Refused(DeskSays.PAN_IN_USE);
    }
    running.set(screen);
    Consumer<WeighEvent> heard = heard(listener);
    current =
        thread.submit(
            () -> {
              Problem problem = run(bench, balance, pans, body, heard);
              work.onScreen(() -> end(listener, problem));
            });
  }

  /** For a run's own events: a consumer that tells the strip and the listener. */
  public Consumer<WeighEvent> heard(Listener listener) {
    return strip.andThen(event -> forward(event, listener));
  }

  private void forward(WeighEvent event, Listener listener) {
    if (!(event instanceof WeighEvent.Live)) {
      work.onScreen(
          () -> {
            told.accept(event);
            listener.happened(event);
          });
    }
  }

  private static @Nullable Problem run(
      Bench bench, LiveBalance balance, PanSettings pans, Body body, Consumer<WeighEvent> heard) {
    String spec = balance.spec().toString();
    try (Scale scale = Scale.open(bench, spec, balance.ears(), pans, SHIFT, heard)) {
      body.run(scale);
      return null;
    } catch (InterruptedException stopped) {
      return null;
    } catch (Problem e) {
      return e;
    } catch (RuntimeException e) {
      return Work.unexpected(e);
    }
  }

  private void end(Listener listener, @Nullable Problem problem) {
    current = null;
    running.set("");
    listener.ended(problem);
  }

  /** Stops the run; what it has recorded stays recorded. */
  public void stop() {
    Future<?> run = current;
    if (run != null) {
      run.cancel(true);
    }
  }
}
