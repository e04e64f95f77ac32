package org.siltbench.station.work.chart;

import org.siltbench.labels.chart.Mark;

/**
 * How thick, how dark, and whether hollow, in millimetres: the same on paper, in a picture and on
 * the screen.
 */
public final class Strokes {

  /** A point of type, mm. */
  public static final double MM_PER_POINT = 25.4 / 72;

  /** The outline of a hollow mark, mm. */
  public static final double OUTLINE = 0.3;

  /** A dash and the gap after it, mm. */
  public static final double DASH = 1.2;

  /** The gap after a dash, mm. */
  public static final double GAP = 0.8;

  private Strokes() {}

  /** How thick a line is, mm. */
  public static double width(Mark.Weight weight) {
    return switch (weight) {
      case HAIR -> 0.1;
      case RULE -> 0.2;
      case STROKE -> 0.4;
    };
  }

  static String colour(Mark.Weight weight) {
    return weight == Mark.Weight.HAIR ? "#888" : "#000";
  }

  /** True if only its outline is drawn. */
  public static boolean hollow(Mark.Shape shape) {
    return switch (shape) {
      case RING, FRAME, KITE -> true;
      case DISC, SQUARE, DIAMOND -> false;
    };
  }
}
