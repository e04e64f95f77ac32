package org.siltbench.balance.stable;

import org.siltbench.balance.StableMass;
import org.siltbench.calc.quantity.Mass;

/** What the pan cycle says while a weighing goes on. */
public sealed interface PanEvent {

  /** The empty pan (or the dish that stays on it) is at rest near zero: ready for a load. */
  record Ready(Mass zero) implements PanEvent {}

  /** The empty pan is off zero by more than allowed: re-zero the balance. */
  record Rezero(Mass offset) implements PanEvent {}

  /** Something lies on the pan and settles. */
  record Settling() implements PanEvent {}

  /** The dish of this load is weighed: put the filter in. */
  record DishWeighed(StableMass dish) implements PanEvent {}

  /** The display expects to keep this value; it is not yet watched. */
  record Provisional(Mass mass, String digits) implements PanEvent {}

  /** A provisional value has been withdrawn. */
  record Withdrawn(String why) implements PanEvent {}

  /** The filter gains mass steadily; it may still be accepted. */
  record TakingUpMoisture(double mgPerMin) implements PanEvent {}

  /**
   * Watched and accepted, once per load.
   *
   * @param stable the mass as displayed
   * @param zeroCorrection what the display showed without the filter: the logged zero of the empty
   *     pan, or the dish
   */
  record Accepted(StableMass stable, Mass zeroCorrection) implements PanEvent {

    /** The mass of the filter: displayed less the logged zero or the dish. */
    public Mass net() {
      return stable.mass().minus(zeroCorrection);
    }
  }

  /** Not acceptable as it lies: moisture, drift, two filters, a touch; the load must come off. */
  record Refused(Reason reason, String why) implements PanEvent {}

  /** What the person can do now, in a sentence. */
  record Hint(String text) implements PanEvent {}

  /** The load was taken off. */
  record Unloaded() implements PanEvent {}

  /** Over or under range, or a fault told by the balance. */
  record OutOfRange(PanSays says) implements PanEvent {
    /** What the balance tells, in English. */
    public String why() {
      return says.english();
    }
  }

  /** Why a load was refused. */
  enum Reason {
    MOISTURE,
    DRIFT,
    DISTURBED,
    OUTSIDE_WINDOW,
    TIMEOUT
  }
}
