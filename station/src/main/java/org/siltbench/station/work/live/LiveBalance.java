package org.siltbench.station.work.live;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.SourceEvent;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.practice.Hand;
import org.siltbench.balance.practice.PracticeSource;
import org.siltbench.calc.reason.Reason;
import org.siltbench.station.work.weigh.Scale;

/**
 * Opens one balance, once, and keeps it open: readings go to the eye, which shows them, and to
 * every opened ear. A balance that cannot be opened is tried again until it can.
 */
public final class LiveBalance implements AutoCloseable {

  private static final Duration STEP = Duration.ofMillis(200);
  private static final int STEPS_UNTIL_TRIED_AGAIN = 10;

  private final LinkSpec spec;
  private final Scale.Opening opening;
  private final Timebase time;
  private final Consumer<SourceEvent> eye;
  private final List<Ear> ears = new CopyOnWriteArrayList<>();
  private volatile @Nullable ReadingSource source;
  private volatile boolean closed;
  private volatile @Nullable Thread worker;
  private boolean lost;

  /**
   * A balance, not yet opened.
   *
   * @param eye sees every event, on the thread that reads
   */
  public LiveBalance(
      LinkSpec spec, Scale.Opening opening, Timebase time, Consumer<SourceEvent> eye) {
    this.spec = paced(spec);
    this.opening = opening;
    this.time = time;
    this.eye = eye;
  }

  /** At a bench where people watch, simulated time goes as fast as real time. */
  private static LinkSpec paced(LinkSpec spec) {
    boolean simulated = spec instanceof LinkSpec.Practice || spec instanceof LinkSpec.Replay;
    return simulated && spec.options().speed() == null
        ? spec.with(spec.options().withSpeed(1.0))
        : spec;
  }

  /** The link. */
  public LinkSpec spec() {
    return spec;
  }

  /** Reads until closed, on a thread of the executor. */
  public void start(Executor thread) {
    thread.execute(
        () -> {
          worker = Thread.currentThread();
          try {
            while (!closed) {
              listen();
            }
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
        });
  }

  private void listen() throws InterruptedException {
    try (ReadingSource opened = opening.open(spec)) {
      source = opened;
      if (lost) {
        lost = false;
        tell(new SourceEvent.Back(opened.describe(), time.nanos(), time.instant()));
      }
      boolean more = true;
      while (more && !closed) {
        SourceEvent event = opened.next(STEP);
        more = !(event instanceof SourceEvent.Ended);
        tell(event instanceof SourceEvent.Ended e ? ended(e) : event);
      }
    } catch (IOException | IllegalArgumentException e) {
      lose(reason(e));
    } finally {
      source = null;
    }
    pause();
  }

  private SourceEvent ended(SourceEvent.Ended end) {
    lost = true;
    return new SourceEvent.Lost(end.reason(), end.nanos(), end.at());
  }

  private void lose(Reason why) {
    if (!lost) {
      lost = true;
      tell(new SourceEvent.Lost(why, time.nanos(), time.instant()));
    }
  }

  private static Reason reason(Exception e) {
    return e instanceof BalanceException b
        ? BalanceSays.WITH_WAY_OUT.with(e, b.wayOut())
        : BalanceSays.AS_TOLD.with(e);
  }

  private void pause() throws InterruptedException {
    for (int step = 0; step < STEPS_UNTIL_TRIED_AGAIN && !closed; step++) {
      Thread.sleep(STEP.toMillis());
      tell(new SourceEvent.Quiet(time.nanos(), time.instant()));
    }
  }

  private void tell(SourceEvent event) {
    for (Ear ear : ears) {
      ear.hear(event, time.nanos(), time.instant());
    }
    eye.accept(event);
  }

  /** Opens an ear; at the practice balance with the hand that serves it. */
  public Scale.Opening ears() {
    return asked -> {
      Ear ear = new Ear(this);
      ears.add(ear);
      ReadingSource open = source;
      return open instanceof PracticeSource practice
          ? new PracticeSource(ear, practice.hand(), practice.time())
          : ear;
    };
  }

  /** The hand at the practice balance; null at any other, or while it is away. */
  public @Nullable Hand hand() {
    return source instanceof PracticeSource practice ? practice.hand() : null;
  }

  /** The clock of the readings: the simulated one at the practice balance. */
  public Timebase time() {
    return source instanceof PracticeSource practice ? practice.time() : time;
  }

  void leave(Ear ear) {
    ears.remove(ear);
    Hand hand = hand();
    if (hand != null) {
      hand.takeOff();
    }
  }

  String describe() {
    ReadingSource open = source;
    return open == null ? spec.toString() : open.describe();
  }

  String formatName() {
    ReadingSource open = source;
    return open == null ? "" : open.formatName();
  }

  @Override
  public void close() {
    closed = true;
    Thread reader = worker;
    if (reader != null) {
      reader.interrupt();
    }
  }
}
