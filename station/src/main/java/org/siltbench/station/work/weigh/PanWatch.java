package org.siltbench.station.work.weigh;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.SourceEvent;
import org.siltbench.balance.stable.PanCycle;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;

/**
 * Watches one pan: pulls the readings, walks the cycle, tells what happens. Used by one thread. It
 * records nothing; a mass it answers still has to pass the rules of the job.
 */
public final class PanWatch implements AutoCloseable {

  private static final Duration STEP = Duration.ofMillis(200);

  private final ReadingSource source;
  private final PanCycle cycle;
  private final LinkWatch link;
  private final Consumer<WeighEvent> listener;
  private boolean empty;
  private boolean loaded;

  public PanWatch(
      ReadingSource source, PanCycle cycle, Patience patience, Consumer<WeighEvent> listener) {
    this.source = source;
    this.cycle = cycle;
    this.listener = listener;
    this.link = new LinkWatch(patience, listener);
  }

  /** The text that names the balance and its line settings. */
  public String describe() {
    return source.describe();
  }

  /** The line format in use. */
  public String formatName() {
    return source.formatName();
  }

  /** True if each reading is one press of the balance's key. */
  public boolean singly() {
    return source.singly();
  }

  /** Waits until the empty pan rests at zero. */
  public void awaitEmpty() throws InterruptedException {
    if (loaded) {
      listener.accept(new WeighEvent.TakeOff());
    }
    if (!empty && source.singly()) {
      PanEvent press = new PanEvent.Hint("Press the balance's key with nothing on the pan.");
      listener.accept(new WeighEvent.OnPan(press));
    }
    while (!empty) {
      for (PanEvent said : step()) {
        if (said instanceof PanEvent.Accepted unasked) {
          tellUnasked(unasked);
        }
      }
    }
  }

  /**
   * Asks for a load and waits until it settles or is refused.
   *
   * @throws Problem.Outside if the balance is silent or away for longer than the patience
   */
  public PanOutcome weigh(PanLoad what) throws InterruptedException {
    awaitEmpty();
    listener.accept(new WeighEvent.Place(what));
    while (true) {
      for (PanEvent event : step()) {
        if (event instanceof PanEvent.Accepted accepted) {
          return new PanOutcome.Stable(
              accepted.stable(), accepted.zeroCorrection(), source.singly());
        }
        if (event instanceof PanEvent.Refused refused) {
          return new PanOutcome.NotTaken(refused.reason(), refused.why());
        }
      }
    }
  }

  /** Goes on reading the balance until the answer is there. */
  public <T> T idle(Supplier<@Nullable T> answer) throws InterruptedException {
    while (true) {
      T got = answer.get();
      if (got != null) {
        return got;
      }
      SourceEvent event = source.next(STEP);
      got = event instanceof SourceEvent.Ended ? answer.get() : null; // one input may feed both
      if (got != null) {
        return got;
      }
      for (PanEvent said : step(event)) {
        if (said instanceof PanEvent.Accepted unasked) {
          tellUnasked(unasked);
        }
      }
    }
  }

  private void tellUnasked(PanEvent.Accepted unasked) {
    listener.accept(new WeighEvent.Unasked(unasked.stable().digits(), unasked.stable().unit()));
    listener.accept(new WeighEvent.TakeOff());
  }

  private List<PanEvent> step() throws InterruptedException {
    return step(source.next(STEP));
  }

  private List<PanEvent> step(SourceEvent event) {
    link.note(event);
    List<PanEvent> said = meaning(event);
    for (PanEvent one : said) {
      follow(one);
      listener.accept(new WeighEvent.OnPan(one));
    }
    return said;
  }

  private List<PanEvent> meaning(SourceEvent event) {
    if (event instanceof SourceEvent.Read read) {
      listener.accept(new WeighEvent.Live(read.reading()));
      return cycle.accept(read.reading());
    }
    if (event instanceof SourceEvent.Lost) {
      empty = false;
      return cycle.linkLost();
    }
    return List.of();
  }

  private void follow(PanEvent event) {
    if (event instanceof PanEvent.Ready) {
      empty = true;
      loaded = false;
    } else if (event instanceof PanEvent.Settling
        || event instanceof PanEvent.Accepted
        || event instanceof PanEvent.Refused
        || event instanceof PanEvent.OutOfRange) {
      empty = false;
      loaded = true;
    } else if (event instanceof PanEvent.Rezero) {
      empty = false;
    }
  }

  @Override
  public void close() {
    try {
      source.close();
    } catch (IOException e) {
      throw new Problem.Outside(e, WeighSays.NOT_CLOSED, Elsewhere.words(e));
    }
  }
}
