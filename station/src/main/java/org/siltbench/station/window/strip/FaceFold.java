package org.siltbench.station.window.strip;

import java.util.List;
import org.siltbench.balance.Reading;
import org.siltbench.balance.SourceEvent;
import org.siltbench.balance.stable.HandsFreePan;
import org.siltbench.balance.stable.PanCycle;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.strip.Face.Prompt;
import org.siltbench.station.window.strip.Face.State;
import org.siltbench.station.work.live.Trace;
import org.siltbench.station.work.weigh.PanOutcome;
import org.siltbench.station.work.weigh.WeighEvent;

/**
 * Folds what the balance and the run say into one face. While a run has the pan its judgement is
 * shown; else the strip watches the pan by itself. Any thread.
 */
final class FaceFold {

  private static final long SILENT_NANOS = 10_000_000_000L;

  private final PanSettings settings = PanSettings.usual();
  private final Trace trace = new Trace();
  private PanCycle idle = new HandsFreePan(settings);
  private Face face = Face.START;
  private boolean running;
  private boolean readyBefore;
  private State resumed = State.UNSURE;
  private long lastRead = Long.MIN_VALUE;

  synchronized Face face() {
    return face;
  }

  Trace trace() {
    return trace;
  }

  /** The balance said something. */
  synchronized void heard(SourceEvent event) {
    if (event instanceof SourceEvent.Read read) {
      read(read.reading());
    } else if (event instanceof SourceEvent.Unreadable line) {
      hold();
      face = face.showing("", "").in(State.UNREADABLE, Words.verbatim(line.raw()));
    } else if (event instanceof SourceEvent.Lost lost) {
      trace.gap(lost.nanos());
      noBand();
      readyBefore = face.state() == State.READY || (readyBefore && face.state() == State.AWAY);
      face = face.showing("", "").in(State.AWAY, Elsewhere.words(lost.reason()));
      idle.linkLost();
    } else if (event instanceof SourceEvent.Back back) {
      lastRead = back.nanos();
      face = face.in(readyBefore ? State.READY : State.UNSURE, Words.none());
      readyBefore = false;
    } else if (event instanceof SourceEvent.Quiet quiet) {
      quiet(quiet.nanos());
    }
  }

  private void quiet(long nanos) {
    if (lastRead == Long.MIN_VALUE) {
      lastRead = nanos;
    }
    if (face.state() != State.AWAY && nanos - lastRead > SILENT_NANOS) {
      hold();
      face = face.showing("", "").in(State.SILENT, Words.none());
    }
  }

  private void read(Reading reading) {
    lastRead = reading.nanos();
    trace.add(reading);
    face = face.showing(reading.digits(), reading.unit());
    if (broken(face.state())) {
      face = face.in(resumed, Words.none());
      resumed = State.UNSURE;
    }
    if (!running) {
      pan(idle.accept(reading));
    }
  }

  /** The run does not say again what it said before the balance fell silent. */
  private void hold() {
    if (!broken(face.state())) {
      resumed = face.state();
    }
  }

  private static boolean broken(State state) {
    return switch (state) {
      case NO_BALANCE, AWAY, SILENT, UNREADABLE -> true;
      default -> false;
    };
  }

  private void pan(List<PanEvent> events) {
    events.forEach(this::pan);
  }

  private void pan(PanEvent event) {
    if (event instanceof PanEvent.Ready) {
      noBand();
      face = face.in(State.READY, Words.none());
      face = face.prompt().kind() == Prompt.Kind.TAKE_OFF ? face.asking(Prompt.NONE) : face;
    } else if (event instanceof PanEvent.Rezero off) {
      face = face.in(State.REZERO, Words.verbatim(off.offset().toGrams()));
    } else if (event instanceof PanEvent.Settling || event instanceof PanEvent.Withdrawn) {
      noBand();
      face = face.in(State.SETTLING, Words.none());
    } else if (event instanceof PanEvent.Unloaded) {
      noBand();
      face = face.in(State.UNSURE, Words.none());
    } else {
      loaded(event);
    }
  }

  private void loaded(PanEvent event) {
    if (event instanceof PanEvent.Provisional held) {
      band(held.mass());
      face = face.in(State.HOLDING, Words.none());
    } else if (event instanceof PanEvent.Accepted accepted) {
      band(accepted.stable().mass());
      face = face.in(State.STABLE, Words.none());
    } else if (event instanceof PanEvent.TakingUpMoisture) {
      face = face.in(State.MOISTURE, Words.none());
    } else if (event instanceof PanEvent.Refused refused) {
      face = face.in(State.REFUSED, PanOutcome.why(refused));
    } else if (event instanceof PanEvent.OutOfRange range) {
      face = face.in(State.OUT_OF_RANGE, Elsewhere.words(range.says().with()));
    }
  }

  private void band(Mass around) {
    trace.band(around, settings.stability().tolerance());
  }

  private void noBand() {
    trace.band(null, settings.stability().tolerance());
  }

  /** The run said something. */
  synchronized void ran(WeighEvent event) {
    running = true;
    if (event instanceof WeighEvent.OnPan on) {
      pan(on.event());
    } else if (event instanceof WeighEvent.Place place) {
      face = face.asking(new Prompt(Prompt.Kind.PLACE, place.what().words()));
    } else if (event instanceof WeighEvent.TakeOff) {
      face = face.asking(new Prompt(Prompt.Kind.TAKE_OFF, Words.none()));
    } else if (event instanceof WeighEvent.Recorded) {
      face =
          face.in(State.RECORDED, Words.none())
              .asking(new Prompt(Prompt.Kind.TAKE_OFF, Words.none()));
    } else if (event instanceof WeighEvent.Declined declined) {
      face =
          face.in(State.REFUSED, declined.why())
              .asking(new Prompt(Prompt.Kind.TAKE_OFF, Words.none()));
    }
  }

  /** The run is over: the strip watches by itself again. */
  synchronized void runOver() {
    running = false;
    idle = new HandsFreePan(settings);
    face = face.asking(Prompt.NONE);
  }
}
