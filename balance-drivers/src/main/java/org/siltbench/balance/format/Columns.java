package org.siltbench.balance.format;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.LineFormat.NumberShape;

/**
 * Draws up the layout of a line that was walked. A layout may only read a line as the walk would
 * read it, and the walk goes from left to right: a part is where it was if all before it is the
 * same, or a field of the same width, and if nothing that a field may begin with is swallowed by
 * the part before it. Where that is not sure there is no layout, and each line is walked.
 */
final class Columns {

  /** What blanks, a sign or a number before a mark would take for their own. */
  private static final String SWALLOWED = " \t0123456789.,+-";

  private final Fields fields;
  private final Walk walk;
  private final int number;
  private final int front;
  private final boolean steady;
  private final Match scratch;

  Columns(Fields fields, Walk walk) {
    this.fields = fields;
    this.walk = walk;
    number = fields.numberPart();
    scratch = new Match(fields.steps.length);
    int first = number;
    while (first > 0 && isFront(fields.steps[first - 1])) {
      first--;
    }
    front = first;
    steady = Arrays.stream(fields.steps).allMatch(Columns::isSteady) && marksStandApart();
  }

  private static boolean isFront(int step) {
    return step == Step.BLANKS || step == Step.GAP || step == Step.SIGN;
  }

  private static boolean isSteady(int step) {
    return step != Step.DIGITS && step != Step.WORD && step != Step.ANY;
  }

  private boolean marksStandApart() {
    boolean atTheBeginning =
        IntStream.range(1, fields.steps.length).noneMatch(i -> fields.steps[i] == Step.MARK);
    return atTheBeginning || fields.marks.noneBeginsWith(SWALLOWED);
  }

  /** The layout of a line; null if lines like it must be walked. */
  @Nullable Layout of(byte[] bytes, int from, int to, Match found) {
    if (!steady || !isPlain(bytes, found) || blanksReachTheFront(found)) {
      return null;
    }
    FrontPlace place = FrontPlace.of(bytes, from, found, found.begins[front] - from);
    if (place == null) {
      return null;
    }
    int[] parts = IntStream.range(0, fields.steps.length).filter(i -> isOpen(i, found)).toArray();
    boolean[] same = new boolean[to - from];
    Arrays.fill(same, true);
    place.open(same);
    Arrays.fill(same, found.numberEnd - found.decimals - from, found.numberEnd - from, false);
    for (int part : parts) {
      Arrays.fill(same, found.begins[part] - from, found.begins[part + 1] - from, false);
    }
    return new Layout(
        bytes,
        from,
        same,
        new OpenFields(fields, walk, parts, found, from),
        place,
        fronts(place, found.decimals),
        found,
        scale(found),
        fields.scales.unit(found.unit).symbol());
  }

  /** Few digits, worth a nanogram or more, of a mass in range, with no comma to wonder about. */
  private boolean isPlain(byte[] bytes, Match found) {
    boolean comma =
        found.decimals == 3
            && fields.shape.point() == NumberShape.EITHER
            && bytes[found.numberEnd - 4] == ',';
    boolean meetsCheck =
        IntStream.range(number, fields.steps.length)
            .anyMatch(i -> fields.steps[i] == Step.CHECK && found.begins[i] == found.numberEnd);
    return found.inRange
        && scale(found) > 0
        && scale(found) <= Long.MAX_VALUE / Layout.MOST
        && found.decimals <= Layout.MOST_DECIMALS
        && !comma
        && !meetsCheck;
  }

  private long scale(Match found) {
    return fields.scales.of(found.unit, found.decimals);
  }

  /** Blanks end at the front of the value with fields of no width between: they may go on. */
  private boolean blanksReachTheFront(Match found) {
    return IntStream.range(0, front)
        .anyMatch(i -> isFront(fields.steps[i]) && found.begins[i + 1] == found.begins[front]);
  }

  /** Fields that may say something else in the next line, other than the value. */
  private boolean isOpen(int part, Match found) {
    return switch (fields.steps[part]) {
      case Step.MARK, Step.CHECK -> true;
      case Step.UNIT, Step.UNIT_OR_NONE ->
          fields.units.values().size() != 1 || found.begins[part] == found.begins[part + 1];
      default -> false;
    };
  }

  /** Asks the walk which places a sign may have before one to seven digits. */
  private long fronts(FrontPlace place, int decimals) {
    long fronts = 0;
    for (int digits = 1; digits <= Math.min(place.width(), Long.BYTES - decimals); digits++) {
      fronts |= front(place.drawn(digits), digits, Layout.NO_SIGN);
      for (int at = Long.BYTES - place.width(); at < Long.BYTES - digits; at++) {
        fronts |= front(place.drawn(digits, at), digits, at);
      }
    }
    return fronts;
  }

  private long front(byte[] drawn, int digits, int sign) {
    return reachesNumber(drawn, digits) ? Layout.front(digits, sign) : 0;
  }

  private boolean reachesNumber(byte[] text, int digits) {
    int at = 0;
    for (int i = front; i < number && at >= 0; i++) {
      at = walk.step(i, text, 0, at, text.length, scratch);
    }
    return at == text.length - digits;
  }
}
