package org.siltbench.balance;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;

/**
 * One line from a balance, parsed. A reading is a small view of the bytes of its line, which stay
 * as they came; its texts are made when somebody asks for them. Two readings are equal if all they
 * say is equal.
 */
public final class Reading {

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

  /** The digits are not part of the line: they stand behind it. No line has this span. */
  private static final int TOLD_APART = -1;

  private final Kind kind;
  private final long nanograms;
  private final String unit;
  private final Mark mark;
  private final byte[] bytes;
  private final int start;
  private final int span;
  private final long nanos;
  private final Instant at;

  /**
   * A reading of which all is said.
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
   * @throws IllegalArgumentException if there is a mass and the kind is another, or the reverse
   */
  public Reading(
      Kind kind,
      @Nullable Mass mass,
      String digits,
      String unit,
      Mark mark,
      String raw,
      long nanos,
      Instant at) {
    if ((kind == Kind.MASS) != (mass != null)) {
      throw new IllegalArgumentException("A mass belongs to kind MASS and to no other: " + kind);
    }
    this.kind = kind;
    this.nanograms = mass == null ? 0 : mass.nanograms();
    this.unit = unit;
    this.mark = mark;
    this.bytes = (raw + digits).getBytes(ISO_8859_1);
    this.start = raw.length();
    this.span = TOLD_APART;
    this.nanos = nanos;
    this.at = at;
  }

  private Reading(
      long nanograms,
      String unit,
      Mark mark,
      byte[] bytes,
      int start,
      int span,
      long nanos,
      Instant at) {
    this.kind = Kind.MASS;
    this.nanograms = nanograms;
    this.unit = unit;
    this.mark = mark;
    this.bytes = bytes;
    this.start = start;
    this.span = span;
    this.nanos = nanos;
    this.at = at;
  }

  /**
   * A mass and the line that carries it; its texts are made only when they are asked for.
   *
   * @param bytes holds the line; nobody changes it from now on
   * @param start where the line begins
   * @param span its length and where the number stands, as {@link LineSpan#of} packs them
   */
  public static Reading ofLine(
      long nanograms,
      String unit,
      Mark mark,
      byte[] bytes,
      int start,
      int span,
      long nanos,
      Instant at) {
    return new Reading(nanograms, unit, mark, bytes, start, span, nanos, at);
  }

  /** Whether the line carries a mass. */
  public Kind kind() {
    return kind;
  }

  /** The mass shown, or null unless {@link #kind} is {@link Kind#MASS}. */
  public @Nullable Mass mass() {
    return kind == Kind.MASS ? new Mass(nanograms) : null;
  }

  /** The number as displayed, sign and decimal point normalised, or empty. */
  public String digits() {
    return span == TOLD_APART
        ? new String(bytes, start, bytes.length - start, ISO_8859_1)
        : LineSpan.number(bytes, start, span);
  }

  /** The usual symbol of the unit shown or supplied by the format; empty unless there is a mass. */
  public String unit() {
    return unit;
  }

  /** The balance's own opinion of stability. */
  public Mark mark() {
    return mark;
  }

  /** The line as received, without its terminator. */
  public String raw() {
    return span == TOLD_APART
        ? new String(bytes, 0, start, ISO_8859_1)
        : LineSpan.line(bytes, start, span);
  }

  /** Arrival on a monotonic clock, ns. */
  public long nanos() {
    return nanos;
  }

  /** Arrival by wall clock. */
  public Instant at() {
    return at;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Reading o
        && kind == o.kind
        && nanograms == o.nanograms
        && mark == o.mark
        && nanos == o.nanos
        && unit.equals(o.unit)
        && at.equals(o.at)
        && digits().equals(o.digits())
        && raw().equals(o.raw());
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind, nanograms, unit, mark, raw(), nanos, at);
  }

  @Override
  public String toString() {
    return "Reading[" + kind + ' ' + digits() + ' ' + unit + ' ' + mark + " \"" + raw() + "\"]";
  }
}
