package org.siltbench.balance.format;

import java.util.List;
import org.siltbench.balance.format.LineFormat.NumberShape;

/**
 * A format laid out for reading: its parts as numbers that a switch goes by, its texts as bytes,
 * its units and marks by place.
 */
final class Fields {

  static final int NO_UNIT = -1;

  final int[] steps;
  final byte[][] texts;
  final int[] counts;
  final Part[] parts;
  final Choice<MassUnit> units;
  final Choice<Meaning> marks;
  final int[] markMeanings;
  final NumberShape shape;
  final Scales scales;
  final int length;
  final int supplied;
  final int missing;

  Fields(LineFormat format) {
    List<Part> line = format.line();
    parts = line.toArray(new Part[0]);
    steps = line.stream().mapToInt(Step::of).toArray();
    texts = line.stream().map(Fields::text).toArray(byte[][]::new);
    counts = line.stream().mapToInt(p -> p instanceof Part.Any any ? any.count() : 0).toArray();
    units = Choice.of(format.units().texts(), u -> u.text(), u -> u.unit());
    marks = Choice.of(format.marks(), m -> m.text(), m -> m.meaning());
    markMeanings = marks.values().stream().mapToInt(Meaning::rank).toArray();
    shape = format.number();
    scales = Scales.of(units.values(), format.units());
    length = format.length();
    supplied = scales.count() > units.values().size() ? units.values().size() : NO_UNIT;
    missing = format.units().missing().rank();
  }

  private static byte[] text(Part part) {
    return part instanceof Part.Text t ? Choice.bytes(t.text()) : new byte[0];
  }

  /** The place of the number among the parts. */
  int numberPart() {
    int i = 0;
    while (steps[i] != Step.NUMBER) {
      i++;
    }
    return i;
  }
}
