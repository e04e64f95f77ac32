package org.siltbench.labels.chart;

import java.time.OffsetDateTime;
import java.util.List;
import org.siltbench.calc.reason.Reason;

/**
 * Values over time with uncertainty bars.
 *
 * @param title what it shows, to be told in any language
 * @param unit for the axis, for example "mg/L"
 * @param series one a site
 */
public record TimeChart(Reason title, String unit, List<Series> series) {

  public TimeChart {
    series = List.copyOf(series);
  }

  /** Points of one site. */
  public record Series(String name, List<Point> points) {
    public Series {
      points = List.copyOf(points);
    }
  }

  /**
   * One result.
   *
   * @param at when collected
   * @param value the result
   * @param half half the length of the bar: the expanded uncertainty, 0 for none
   * @param below true below the reporting limit: drawn hollow
   */
  public record Point(OffsetDateTime at, double value, double half, boolean below) {}
}
