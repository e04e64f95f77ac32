package org.siltbench.labels.chart;

import java.util.List;
import org.siltbench.calc.reason.Reason;

/**
 * One quantity against another, joined in the order of time: concentration against discharge
 * through an event.
 *
 * @param title what it shows, to be told in any language
 * @param unit for the upright axis, for example "mg/L"
 * @param across what the lower axis shows, with its unit
 * @param points in the order of time
 */
public record LoopChart(Reason title, String unit, Reason across, List<Point> points) {

  public LoopChart {
    points = List.copyOf(points);
  }

  /** One point: where it lies across, and how high. */
  public record Point(double across, double value) {}
}
