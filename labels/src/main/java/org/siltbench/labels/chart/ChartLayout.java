package org.siltbench.labels.chart;

import java.util.List;

/** Lays charts out as marks, for any surface that can draw lines, dots and words. */
public final class ChartLayout {

  private ChartLayout() {}

  /** The marks of a time chart in a box of the given size, millimetres. */
  public static List<Mark> of(TimeChart chart, double width, double height) {
    return List.of(new Mark.Words(width, height, chart.title(), 3, Mark.Anchor.LEFT));
  }

  /** The marks of a control chart in a box of the given size, millimetres. */
  public static List<Mark> of(ControlChart chart, double width, double height) {
    return List.of(new Mark.Words(width, height, chart.title(), 3, Mark.Anchor.LEFT));
  }
}
