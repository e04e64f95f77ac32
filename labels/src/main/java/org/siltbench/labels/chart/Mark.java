package org.siltbench.labels.chart;

/** One mark of a chart, in millimetres from the top left corner of its box. */
public sealed interface Mark {

  /** The weight of a line: a hair for the grid, a rule for axes, a stroke for data. */
  enum Weight {
    HAIR,
    RULE,
    STROKE
  }

  /** Where a text's given point lies in it. */
  enum Anchor {
    LEFT,
    CENTRE,
    RIGHT
  }

  /** The shape of a data point: told apart without colour. */
  enum Shape {
    DISC,
    RING,
    SQUARE,
    FRAME,
    DIAMOND,
    KITE
  }

  /** A straight line. */
  record Line(double x1, double y1, double x2, double y2, Weight weight, boolean dashed)
      implements Mark {}

  /** A data point. */
  record Dot(double x, double y, double size, Shape shape) implements Mark {}

  /** A line of text on its base line; its size in points. */
  record Words(double x, double y, String text, double size, Anchor anchor) implements Mark {}
}
