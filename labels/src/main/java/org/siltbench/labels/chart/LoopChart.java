package org.siltbench.labels.chart;

import java.util.List;

/**
 * One quantity against another, joined in the order of time: concentration against discharge
 * through an event.
 *
 * @param unit for the upright axis, for example "mg/L"
 * @param across what the lower axis shows, with its unit
 * @param points in the order of time
 */
public record LoopChart(String title, String unit, String across, List<Point> points) {

  public LoopChart {
    points = List.copyOf(points);
  }

  /** One point: where it lies across, and how high. */
  public record Point(double across, double value) {}
}
