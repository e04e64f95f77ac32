package org.siltbench.balance.stable;

import org.siltbench.balance.StableMass;
import org.siltbench.calc.quantity.Mass;

/** What the pan cycle says while a weighing goes on. */
public sealed interface PanEvent {

  /** The empty pan is at rest near zero: ready for the next load. */
  record Ready(Mass zero) implements PanEvent {}

  /** The empty pan is off zero by more than allowed: re-zero the balance. */
  record Rezero(Mass offset) implements PanEvent {}

  /** Something lies on the pan and settles. */
  record Settling() implements PanEvent {}

  /** The display expects to keep this value; it is not yet watched. */
  record Provisional(Mass mass, String digits) implements PanEvent {}

  /** A provisional value has been withdrawn. */
  record Withdrawn(String why) implements PanEvent {}

  /** Watched and accepted, net of the logged zero; once per load. */
  record Accepted(StableMass stable, Mass zeroCorrection) implements PanEvent {}

  /** Not acceptable as it lies: moisture, drift, two filters, a touch; the load must come off. */
  record Refused(Reason reason, String why) implements PanEvent {}

  /** The load was taken off. */
  record Unloaded() implements PanEvent {}

  /** Over or under range, or a fault told by the balance. */
  record OutOfRange(String why) implements PanEvent {}

  /** Why a load was refused. */
  enum Reason {
    MOISTURE,
    DRIFT,
    DISTURBED,
    OUTSIDE_WINDOW,
    TIMEOUT
  }
}
