package org.siltbench.balance.stable;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.StableMass;
import org.siltbench.calc.quantity.Mass;

/**
 * The pan cycle of a balance that sends a line only when its key is pressed. One line proves no
 * rest, and no number of presses shows a slow gain of moisture. So a load is taken only between two
 * prints of the empty pan, and only when two prints of it, at least five seconds apart, differ by
 * one displayed step at most. Our own rule; what it gives is marked for good by who records it.
 */
public final class PressedPan implements PanCycle {

  private static final double APART_S = 5;
  private static final double NANOS_PER_S = 1e9;
  private static final double S_PER_MIN = 60;

  private static final PanEvent AGAIN =
      new PanEvent.Hint(
          "Wait until the display rests, at least five seconds; press the key again.");

  private enum Step {
    SEEKING_EMPTY,
    READY,
    PRESSED_ONCE,
    DONE
  }

  private final PanSettings settings;
  private Step step = Step.SEEKING_EMPTY;
  private Mass zero = Mass.ZERO;
  private @Nullable Reading first;

  /** A pan of which nothing is known yet. */
  public PressedPan(PanSettings settings) {
    this.settings = settings;
  }

  /** Has no effect: two presses cannot tell how much moisture was taken up. */
  @Override
  public void outOfDesiccatorSince(long nanos) {}

  @Override
  public List<PanEvent> linkLost() {
    first = null;
    step = step == Step.DONE ? Step.DONE : Step.SEEKING_EMPTY;
    return List.of();
  }

  @Override
  public List<PanEvent> accept(Reading reading) {
    Mass mass = reading.mass();
    if (mass == null) {
      first = null;
      return List.of(new PanEvent.OutOfRange(PanSays.NO_MASS));
    }
    if (reading.mark() == Reading.Mark.MOVING) {
      return List.of(new PanEvent.Hint("The balance itself says it moves: wait, press again."));
    }
    return isEmpty(mass) ? empty(mass) : loaded(reading, mass);
  }

  private boolean isEmpty(Mass mass) {
    return 2 * mass.abs().nanograms() < settings.window().least().nanograms();
  }

  private List<PanEvent> empty(Mass mass) {
    boolean unloaded = step == Step.DONE || step == Step.PRESSED_ONCE;
    first = null;
    if (mass.abs().compareTo(settings.zeroLimit()) > 0) {
      step = Step.SEEKING_EMPTY;
      return List.of(new PanEvent.Rezero(mass));
    }
    step = Step.READY;
    zero = mass;
    PanEvent ready = new PanEvent.Ready(mass);
    return unloaded ? List.of(new PanEvent.Unloaded(), ready) : List.of(ready);
  }

  private List<PanEvent> loaded(Reading reading, Mass mass) {
    return switch (step) {
      case SEEKING_EMPTY, DONE ->
          List.of(
              new PanEvent.Hint(
                  "The pan is not empty. Clear it and press the key with nothing on it."));
      case READY -> {
        step = Step.PRESSED_ONCE;
        first = reading;
        yield List.of(
            new PanEvent.Settling(), new PanEvent.Provisional(mass, reading.digits()), AGAIN);
      }
      case PRESSED_ONCE -> again(reading, mass);
    };
  }

  private List<PanEvent> again(Reading reading, Mass mass) {
    Reading before = first;
    Mass other = before == null ? null : before.mass();
    if (before == null || other == null) {
      first = reading;
      return List.of(new PanEvent.Provisional(mass, reading.digits()));
    }
    double seconds = (reading.nanos() - before.nanos()) / NANOS_PER_S;
    if (seconds < APART_S) {
      return List.of(new PanEvent.Hint("Too soon to tell rest: wait five seconds, press again."));
    }
    Mass step = division(reading, before);
    Mass apart = mass.minus(other);
    if (apart.abs().compareTo(step) > 0) {
      first = reading;
      return List.of(
          new PanEvent.Hint(
              before.digits()
                  + ", then "
                  + reading.digits()
                  + ": still moving. Press again later."));
    }
    return List.of(judged(stable(before, reading, mass, step, seconds)));
  }

  private PanEvent judged(StableMass stable) {
    step = Step.DONE;
    first = null;
    Mass net = stable.mass().minus(zero);
    return settings.window().holds(net)
        ? new PanEvent.Accepted(stable, zero)
        : new PanEvent.Refused(
            PanEvent.Reason.OUTSIDE_WINDOW, PanWords.outside(net, settings.window()));
  }

  /** Two readings: their standard deviation, or that of one step, whichever is more. */
  private static StableMass stable(
      Reading before, Reading last, Mass mass, Mass step, double seconds) {
    Mass other = before.mass() == null ? mass : before.mass();
    double apart = mass.minus(other).milligrams();
    double s = Math.max(Math.abs(apart), step.milligrams()) / Math.sqrt(2);
    double drift = apart / seconds * S_PER_MIN;
    return new StableMass(
        mass, last.digits(), last.unit(), step, s, drift, 0, List.of(before, last));
  }

  /** What the last digit shown is worth: the coarser of the two prints. */
  private static Mass division(Reading a, Reading b) {
    Resolution resolution = new Resolution(0);
    long coarsest = 0;
    for (Reading one : List.of(a, b)) {
      Mass mass = one.mass();
      boolean unused = mass != null && resolution.changedBy(one, mass.nanograms());
      coarsest = Math.max(coarsest, resolution.nanograms());
    }
    return new Mass(coarsest);
  }
}
