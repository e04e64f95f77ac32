package org.siltbench.calc.load;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.siltbench.calc.reason.Unfit;
import org.siltbench.calc.stats.Checked;

/**
 * Values over time at one site, linear between neighbours, with a longest step that may be bridged.
 * Discharge (m³/s) or concentration (mg/L).
 */
public final class Series {

  private final List<Point> points;
  private final Duration longestStep;

  /**
   * One point.
   *
   * @param at when
   * @param value finite
   */
  public record Point(Instant at, double value) {

    /**
     * Checks the value.
     *
     * @throws IllegalArgumentException if it is not finite
     */
    public Point {
      Checked.finite(value, "value at " + at);
    }
  }

  /**
   * A stretch without data.
   *
   * @param from where it begins
   * @param to where it ends
   */
  public record Gap(Instant from, Instant to) {

    /** How long it is. */
    public Duration length() {
      return Duration.between(from, to);
    }
  }

  private Series(List<Point> points, Duration longestStep) {
    this.points = points;
    this.longestStep = longestStep;
  }

  /**
   * A series; the order given does not matter.
   *
   * @param points at least one, no two at the same time
   * @param longestStep two neighbours further apart leave a gap; above zero
   * @throws IllegalArgumentException if there is none, two share a time (which one counts must be
   *     decided by a person) or the step is not above zero
   */
  public static Series of(List<Point> points, Duration longestStep) {
    Checked.atLeast(points.size(), 1, "number of points");
    if (longestStep.isNegative() || longestStep.isZero()) {
      throw new Unfit(SeriesSays.LONGEST_STEP, longestStep);
    }
    List<Point> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparing(Point::at));
    for (int i = 1; i < sorted.size(); i++) {
      if (sorted.get(i).at().equals(sorted.get(i - 1).at())) {
        throw new Unfit(SeriesSays.TWO_VALUES, sorted.get(i).at());
      }
    }
    return new Series(List.copyOf(sorted), longestStep);
  }

  /** The points in order of time. */
  public List<Point> points() {
    return points;
  }

  /** The first time. */
  public Instant first() {
    return points.get(0).at();
  }

  /** The last time. */
  public Instant last() {
    return points.get(points.size() - 1).at();
  }

  /**
   * The value at a time, linear between neighbours; NaN before the first, after the last and within
   * a gap. A point's own value is always known.
   */
  public double at(Instant time) {
    int i = indexAtOrBefore(time);
    if (i < 0) {
      return Double.NaN;
    }
    Point left = points.get(i);
    if (left.at().equals(time)) {
      return left.value();
    }
    if (i + 1 == points.size() || gapAfter(i)) {
      return Double.NaN;
    }
    Point right = points.get(i + 1);
    double f = seconds(left.at(), time) / seconds(left.at(), right.at());
    return left.value() + f * (right.value() - left.value());
  }

  /** True if the step after place i is too long to be bridged. */
  boolean gapAfter(int i) {
    return Duration.between(points.get(i).at(), points.get(i + 1).at()).compareTo(longestStep) > 0;
  }

  /** Place of the last point at or before a time; −1 if none. */
  int indexAtOrBefore(Instant time) {
    int low = 0;
    int high = points.size() - 1;
    while (low <= high) {
      int mid = (low + high) >>> 1;
      if (points.get(mid).at().isAfter(time)) {
        high = mid - 1;
      } else {
        low = mid + 1;
      }
    }
    return high;
  }

  static double seconds(Instant from, Instant to) {
    Duration d = Duration.between(from, to);
    return d.getSeconds() + d.getNano() / 1e9;
  }
}
