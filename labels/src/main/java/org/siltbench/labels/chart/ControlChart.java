package org.siltbench.labels.chart;

import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Reason;

/**
 * Check weighings in order against their limits.
 *
 * @param title what it shows, to be told in any language
 * @param unit for the axis, for example "mg"
 * @param centre the centre line
 * @param lower lower control limit, or null
 * @param upper upper control limit, or null
 * @param limit the balance's limit either side of zero error
 */
public record ControlChart(
    Reason title,
    String unit,
    double centre,
    @Nullable Double lower,
    @Nullable Double upper,
    double limit,
    List<Point> points) {

  public ControlChart {
    points = List.copyOf(points);
  }

  /** One check weighing. */
  public record Point(OffsetDateTime at, double value) {}
}
