package org.siltbench.labels.label;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.code.CodeGrid;
import org.siltbench.labels.code.Dots;

/**
 * Where things go on every label of a run, so that all look alike. Lengths in millimetres.
 *
 * @param moduleDots dots per module
 * @param codeWidth room for the code with its quiet zone
 * @param codeHeight the same down
 * @param zone height of the part with code and words
 * @param points size of ID and mass
 * @param idLines lines the ID takes
 * @param rows boxes to write in, a list a row
 * @param pitch height of a row
 */
record LabelPlan(
    int moduleDots,
    double codeWidth,
    double codeHeight,
    double zone,
    double points,
    int idLines,
    List<List<WriteIn>> rows,
    double pitch) {

  /** Between the code and the words, and between the words and the boxes. */
  static final double GAP = 0.8;

  private static final double MM_PER_POINT = 25.4 / 72;
  private static final double LINE = 1.14;

  /** An ID is broken over two lines only where one line would be smaller than this. */
  private static final double BREAK_BELOW = 7;

  private static final double LEAST_POINTS = 6.2;
  private static final double LEAST_POINTS_WITH_ROWS = 7.5;
  private static final double MOST_POINTS = 24;
  private static final double LEAST_MODULE_WITH_ROWS = 0.33;
  private static final double MOST_MODULE = 1.25;
  private static final double LEAST_BARS = 7;
  private static final double MOST_BARS = 15;

  /** What a run asks of its labels: the widest of everything. */
  record Need(
      CodeGrid grid,
      double oneLineEms,
      double twoLineEms,
      double massEms,
      boolean practice,
      boolean slip,
      Dots dots) {}

  /** The plan with the most boxes to write in that keeps code and words readable, or null. */
  static @Nullable LabelPlan of(Need need, double width, double height) {
    int most = need.slip() ? 0 : Math.max(1, WriteIn.rowsFor(height));
    for (int rows = most; rows > 0; rows--) {
      List<List<WriteIn>> fields = WriteIn.rows(rows, width);
      LabelPlan plan = fields.isEmpty() ? null : withRows(need, width, height, fields);
      if (plan != null) {
        return plan;
      }
    }
    return inZone(need, width, height, List.of());
  }

  private static @Nullable LabelPlan withRows(
      Need need, double width, double height, List<List<WriteIn>> fields) {
    int rows = fields.size();
    double good = WriteIn.goodPitch(rows, height);
    for (double pitch = good; pitch > WriteIn.LEAST_PITCH - 0.01; pitch -= 0.25) {
      LabelPlan plan = inZone(need, width, height - GAP - rows * pitch, fields);
      if (plan != null) {
        return plan.withPitch(pitch);
      }
    }
    return null;
  }

  private LabelPlan withPitch(double newPitch) {
    return new LabelPlan(moduleDots, codeWidth, codeHeight, zone, points, idLines, rows, newPitch);
  }

  private static @Nullable LabelPlan inZone(
      Need need, double width, double zone, List<List<WriteIn>> fields) {
    return need.grid().kind().isBars()
        ? underBars(need, width, zone, fields)
        : besideSquare(need, width, zone, fields);
  }

  private static @Nullable LabelPlan besideSquare(
      Need need, double width, double zone, List<List<WriteIn>> fields) {
    Dots dots = need.dots();
    int modules = need.grid().columnsWithQuiet();
    int most =
        Math.min(
            dots.mostFor(modules, Math.min(zone, 0.48 * width)),
            (int) Math.floor(MOST_MODULE / dots.dot()));
    int least = fields.isEmpty() ? dots.fewest() : leastWithRows(dots);
    for (int module = most; module >= least; module--) {
      double code = module * modules * dots.dot();
      LabelPlan plan = words(need, width - code - GAP, zone, fields, module, code, code);
      if (plan != null) {
        return plan;
      }
    }
    return null;
  }

  private static int leastWithRows(Dots dots) {
    return Math.max(dots.fewest(), (int) Math.ceil(LEAST_MODULE_WITH_ROWS / dots.dot() - 1e-9));
  }

  private static @Nullable LabelPlan underBars(
      Need need, double width, double zone, List<List<WriteIn>> fields) {
    Dots dots = need.dots();
    int modules = need.grid().columnsWithQuiet();
    int module = Math.min(dots.mostFor(modules, width), (int) Math.floor(0.5 / dots.dot()));
    if (module < dots.fewest()) {
      return null;
    }
    for (double bars = Math.min(MOST_BARS, zone * 0.55); bars >= LEAST_BARS; bars -= 0.5) {
      double code = module * modules * dots.dot();
      LabelPlan plan = words(need, width, zone - bars - GAP, fields, module, code, bars);
      if (plan != null) {
        return new LabelPlan(
            module, code, bars, zone, plan.points(), plan.idLines(), fields, plan.pitch());
      }
    }
    return null;
  }

  private static @Nullable LabelPlan words(
      Need need,
      double width,
      double height,
      List<List<WriteIn>> fields,
      int module,
      double codeWidth,
      double codeHeight) {
    double one = points(need, width, height, 1);
    double two = points(need, width, height, 2);
    int lines = one < BREAK_BELOW && two > 1.1 * one ? 2 : 1;
    double best = Math.min(MOST_POINTS, lines == 1 ? one : two);
    if (best < (fields.isEmpty() ? LEAST_POINTS : LEAST_POINTS_WITH_ROWS)) {
      return null;
    }
    return new LabelPlan(module, codeWidth, codeHeight, height, best, lines, fields, 0);
  }

  private static double points(Need need, double width, double height, int idLines) {
    double widest = Math.max(idLines == 1 ? need.oneLineEms() : need.twoLineEms(), need.massEms());
    double byWidth = width / (widest * MM_PER_POINT);
    double lines = (idLines + 1) * LINE + (need.practice() ? 2 : 1) * BAND;
    double byHeight = (height - (need.practice() ? 2 : 1) * BAND_GAP) / (lines * MM_PER_POINT);
    return Math.min(byWidth, byHeight);
  }

  /** A band's height as a part of the size of the ID. */
  static final double BAND = 0.92;

  /** White between a band and the words above it. */
  static final double BAND_GAP = 0.35;

  double lineHeight() {
    return points * LINE * MM_PER_POINT;
  }

  double bandHeight() {
    return points * BAND * MM_PER_POINT;
  }
}
