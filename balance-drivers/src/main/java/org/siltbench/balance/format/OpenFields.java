package org.siltbench.balance.format;

import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading.Mark;

/**
 * The fields of a layout that may say something else in each line, other than the value: marks,
 * check digits, and units if there are several. Each must end where it did.
 */
final class OpenFields {

  private final Walk walk;
  private final Choice<Meaning> marks;
  private final int mark;
  private final int[] parts;
  private final int[] begins;
  private final int[] ends;
  private final Match found;
  private final int unit;

  OpenFields(Fields fields, Walk walk, int[] parts, Match line, int from) {
    this.walk = walk;
    this.parts = parts;
    marks = fields.marks;
    found = new Match(fields.steps.length);
    unit = line.unit;
    begins = new int[parts.length];
    ends = new int[parts.length];
    for (int i = 0; i < parts.length; i++) {
      begins[i] = line.begins[parts[i]] - from;
      ends[i] = line.begins[parts[i] + 1] - from;
    }
    boolean onlyMark = parts.length == 1 && fields.steps[parts[0]] == Step.MARK;
    mark = onlyMark && marks.hasOneWidth() ? begins[0] : -1;
  }

  /** What they say of the mass; null if there is none, or a field is not where it was. */
  @Nullable Mark mark(byte[] bytes, int from, int to) {
    if (mark >= 0) {
      Meaning meaning = marks.begins(Words.inside(bytes, from + mark));
      return meaning == null ? null : meaning.mark();
    }
    return parts.length == 0 ? Mark.NONE : all(bytes, from, to);
  }

  private @Nullable Mark all(byte[] bytes, int from, int to) {
    found.begin(unit);
    for (int i = 0; i < parts.length; i++) {
      int end = walk.step(parts[i], bytes, from, from + begins[i], to, found);
      if (end != from + ends[i] || found.unit != unit) {
        return null;
      }
    }
    return Meaning.ofRank(found.meaning).mark();
  }
}
