package org.siltbench.station.work.chart;

import org.siltbench.labels.chart.Mark;

/** How thick, how dark, and whether hollow. */
final class Strokes {

  private Strokes() {}

  static double width(Mark.Weight weight) {
    return switch (weight) {
      case HAIR -> 0.1;
      case RULE -> 0.2;
      case STROKE -> 0.4;
    };
  }

  static String colour(Mark.Weight weight) {
    return weight == Mark.Weight.HAIR ? "#888" : "#000";
  }

  static boolean hollow(Mark.Shape shape) {
    return switch (shape) {
      case RING, FRAME, KITE -> true;
      case DISC, SQUARE, DIAMOND -> false;
    };
  }
}
