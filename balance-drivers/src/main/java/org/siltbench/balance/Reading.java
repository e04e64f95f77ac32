package org.siltbench.balance;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;

/**
 * One line from a balance, parsed.
 *
 * @param kind whether the line carries a mass
 * @param mass the mass shown, or null unless {@code kind} is {@link Kind#MASS}
 * @param digits the number as displayed, sign and decimal point normalised, or empty
 * @param unit the usual symbol of the unit shown or supplied by the format, as {@code g}; empty
 *     unless there is a mass
 * @param mark the balance's own opinion of stability
 * @param raw the line as received, without its terminator
 * @param nanos arrival on a monotonic clock, ns
 * @param at arrival by wall clock
 */
public record Reading(
    Kind kind,
    @Nullable Mass mass,
    String digits,
    String unit,
    Mark mark,
    String raw,
    long nanos,
    Instant at) {

  /** What a line says. */
  public enum Kind {
    /** A mass. */
    MASS,
    /** Load above the weighing range. */
    OVER,
    /** Load below the weighing range, or the pan lifted. */
    UNDER,
    /** The balance reports a fault. */
    FAULT
  }

  /** The balance's own stable mark: evidence, never truth. */
  public enum Mark {
    /** The balance says the value is stable. */
    STABLE,
    /** The balance says the value is moving. */
    MOVING,
    /** The format has no mark. */
    NONE
  }

  /** Refuses a mass where there is none and the reverse. */
  public Reading {
    if ((kind == Kind.MASS) != (mass != null)) {
      throw new IllegalArgumentException("a mass belongs to kind MASS and to no other: " + kind);
    }
  }
}
