package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.calc.quantity.Mass;

/**
 * Reads lines by one format, for one stream and one thread. Nothing is allocated beyond the reading
 * itself and the texts it holds.
 */
public final class ReferenceParser {

  private final LineFormat format;
  private final ReferenceMatcher matcher;
  private final Texts texts;
  private final boolean firstOnly;
  private final byte[] digits = new byte[ReferenceMatcher.MAX_DIGITS + 4];
  private @Nullable MassUnit seen;
  private @Nullable String why;

  ReferenceParser(LineFormat format) {
    this.format = format;
    this.matcher = new ReferenceMatcher(format);
    this.texts = new Texts(format.texts());
    this.firstOnly = format.units().firstOnly();
  }

  /** The format read by. */
  public LineFormat format() {
    return format;
  }

  /** Why the last line gave no reading; null if it gave one or is to be ignored. */
  public @Nullable String why() {
    return why;
  }

  /**
   * Reads the bytes from {@code from} to before {@code to}.
   *
   * @return the reading, or null if the line gives none; {@link #why} then says why, unless the
   *     line is one that the format ignores
   */
  public @Nullable Reading parse(byte[] bytes, int from, int to, long nanos, Instant at) {
    why = null;
    if (matcher.match(bytes, from, to)) {
      return matched(bytes, from, to, nanos, at);
    }
    Meaning meaning = texts.find(bytes, from, to);
    if (meaning == Meaning.IGNORE) {
      return null;
    }
    if (meaning != null) {
      return noMass(kind(meaning), bytes, from, to, nanos, at);
    }
    why =
        Misfit.explain(matcher.failedPart(), matcher.failedAt(), format, bytes, from, to).english();
    return null;
  }

  private @Nullable Reading matched(byte[] bytes, int from, int to, long nanos, Instant at) {
    Meaning meaning = matcher.meaning();
    if (meaning.compareTo(Meaning.UNDER) >= 0) {
      return meaning == Meaning.IGNORE ? null : noMass(kind(meaning), bytes, from, to, nanos, at);
    }
    MassUnit unit = matcher.unit();
    if (!expected(unit)) {
      return null;
    }
    if (!matcher.inRange(unit)) {
      why = "the number is finer than a nanogram or beyond 9200 t";
      return null;
    }
    return new Reading(
        Reading.Kind.MASS,
        new Mass(matcher.nanograms()),
        digits(bytes),
        unit.symbol(),
        mark(meaning),
        new String(bytes, from, to - from, ISO_8859_1),
        nanos,
        at);
  }

  private boolean expected(MassUnit unit) {
    if (!firstOnly) {
      return true;
    }
    if (seen == null) {
      seen = unit;
    }
    if (seen != unit) {
      String before = Objects.requireNonNull(seen).symbol();
      why = "the unit changed from " + before + " to " + unit.symbol() + ": set the balance back";
    }
    return seen == unit;
  }

  private static Reading noMass(
      Reading.Kind kind, byte[] bytes, int from, int to, long nanos, Instant at) {
    String raw = new String(bytes, from, to - from, ISO_8859_1);
    return new Reading(kind, null, "", "", Reading.Mark.NONE, raw, nanos, at);
  }

  private static Reading.Kind kind(Meaning meaning) {
    return switch (meaning) {
      case OVER -> Reading.Kind.OVER;
      case UNDER -> Reading.Kind.UNDER;
      case NOTHING, STABLE, MOVING, FAULT, IGNORE -> Reading.Kind.FAULT;
    };
  }

  private static Reading.Mark mark(Meaning meaning) {
    return switch (meaning) {
      case STABLE -> Reading.Mark.STABLE;
      case MOVING -> Reading.Mark.MOVING;
      case NOTHING, UNDER, OVER, FAULT, IGNORE -> Reading.Mark.NONE;
    };
  }

  /** The number as displayed: no plus, no superfluous zeros in front, a point. */
  private String digits(byte[] bytes) {
    int start = matcher.numberStart();
    int end = matcher.numberEnd();
    boolean padded =
        bytes[start] == '0' && start + 1 < end && ReferenceMatcher.isDigit(bytes[start + 1]);
    return matcher.negative() || matcher.hasComma() || padded
        ? normalised(bytes)
        : new String(bytes, start, end - start, ISO_8859_1);
  }

  private String normalised(byte[] bytes) {
    int n = 0;
    if (matcher.negative()) {
      digits[n++] = '-';
    }
    int at = matcher.numberStart();
    int end = matcher.numberEnd();
    while (at + 1 < end && bytes[at] == '0' && ReferenceMatcher.isDigit(bytes[at + 1])) {
      at++;
    }
    if (!ReferenceMatcher.isDigit(bytes[at])) {
      digits[n++] = '0';
    }
    for (; at < end; at++) {
      digits[n++] = bytes[at] == ',' ? (byte) '.' : bytes[at];
    }
    if (digits[n - 1] == '.') {
      n--;
    }
    return new String(digits, 0, n, ISO_8859_1);
  }
}
