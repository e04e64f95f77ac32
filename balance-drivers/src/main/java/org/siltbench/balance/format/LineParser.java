package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.LineSpan;
import org.siltbench.balance.Reading;
import org.siltbench.calc.reason.Reason;

/**
 * Reads lines by one format, for one stream and one thread. Nothing is allocated beyond the reading
 * itself.
 */
public final class LineParser {

  private final LineFormat format;
  private final Fields fields;
  private final Walk walk;
  private final Layouts layouts;
  private final Match found;
  private final Texts texts;
  private final boolean firstOnly;
  private @Nullable MassUnit seen;
  private @Nullable Reason why;

  LineParser(LineFormat format) {
    this.format = format;
    this.fields = new Fields(format);
    this.walk = new Walk(fields);
    this.layouts = new Layouts(fields, walk);
    this.found = new Match(format.line().size());
    this.texts = new Texts(format.texts());
    this.firstOnly = format.units().firstOnly();
  }

  /** The format read by. */
  public LineFormat format() {
    return format;
  }

  /** Why the last line gave no reading, in English; null if it gave one or is to be ignored. */
  public @Nullable String why() {
    Reason told = why;
    return told == null ? null : told.english();
  }

  /** The same, to be told in any language. */
  public @Nullable Reason reason() {
    return why;
  }

  /**
   * Reads the bytes from {@code from} to before {@code to}. The reading looks at them for as long
   * as it lives: they must not change any more.
   *
   * @return the reading, or null if the line gives none; {@link #why} then says why, unless the
   *     line is one that the format ignores
   */
  public @Nullable Reading parse(byte[] bytes, int from, int to, long nanos, Instant at) {
    why = null;
    Layout known = layouts.of(to - from);
    Reading reading = known == null ? null : known.read(bytes, from, to, nanos, at);
    return reading != null ? reading : walked(bytes, from, to, nanos, at);
  }

  private @Nullable Reading walked(byte[] bytes, int from, int to, long nanos, Instant at) {
    if (walk.match(bytes, from, to, found)) {
      return matched(bytes, from, to, nanos, at);
    }
    Meaning meaning = texts.find(bytes, from, to);
    if (meaning == Meaning.IGNORE) {
      return null;
    }
    if (meaning != null) {
      return noMass(kind(meaning), bytes, from, to, nanos, at);
    }
    why = Misfit.explain(found.failedPart, found.failedAt, format, bytes, from, to);
    return null;
  }

  private @Nullable Reading matched(byte[] bytes, int from, int to, long nanos, Instant at) {
    Meaning meaning = Meaning.ofRank(found.meaning);
    Reading.Mark mark = meaning.mark();
    if (mark == null) {
      return meaning == Meaning.IGNORE ? null : noMass(kind(meaning), bytes, from, to, nanos, at);
    }
    MassUnit unit = fields.scales.unit(found.unit);
    if (!expected(unit)) {
      return null;
    }
    fields.scales.weigh(found);
    if (!found.inRange) {
      why = FormatSays.NOT_A_MASS.with();
      return null;
    }
    layouts.learn(bytes, from, to, found);
    int span =
        LineSpan.of(to - from, found.numberStart - from, found.numberEnd - from, found.negative);
    return Reading.ofLine(found.nanograms, unit.symbol(), mark, bytes, from, span, nanos, at);
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
      why = FormatSays.UNIT_CHANGED.with(before, unit.symbol());
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
}
