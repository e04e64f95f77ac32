package org.siltbench.calc.load;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Concentration against discharge through an event, in the order of time: the loop that shows
 * whether the sediment came before the water or after it.
 *
 * @param points in order of time, where both are known
 * @param area signed area of the closed loop with both axes scaled to 0…1; above zero is clockwise
 *     (concentration leads discharge), in [−1, 1] for a simple loop
 * @param turn the direction
 */
public record DischargeLoop(List<Point> points, double area, Turn turn) {

  /**
   * Areas smaller than this are no loop: about the thickness of the line drawn (our own choice).
   */
  public static final double NO_LOOP = 0.02;

  /** Which way the loop turns, with discharge to the right and concentration up. */
  public enum Turn {
    /** Concentration leads: sediment near at hand, used up early. */
    CLOCKWISE,
    /** Concentration lags: sediment from further away. */
    ANTICLOCKWISE,
    /** Neither, or too few points to tell. */
    NONE
  }

  /**
   * One point.
   *
   * @param at when
   * @param discharge m³/s
   * @param concentration mg/L
   */
  public record Point(Instant at, double discharge, double concentration) {}

  /**
   * Takes each concentration with the discharge of its time; points in a gap of the discharge are
   * left out. Area by the shoelace formula, the end joined to the begin.
   *
   * @param discharge m³/s
   * @param concentration mg/L
   */
  public static DischargeLoop of(Series discharge, Series concentration) {
    List<Point> points = new ArrayList<>();
    for (Series.Point c : concentration.points()) {
      double q = discharge.at(c.at());
      if (!Double.isNaN(q)) {
        points.add(new Point(c.at(), q, c.value()));
      }
    }
    double area = points.size() < 3 ? 0 : area(points);
    return new DischargeLoop(List.copyOf(points), area, turn(area));
  }

  private static Turn turn(double area) {
    if (Math.abs(area) < NO_LOOP) {
      return Turn.NONE;
    }
    return area > 0 ? Turn.CLOCKWISE : Turn.ANTICLOCKWISE;
  }

  private static double area(List<Point> points) {
    double[] q = scaled(points.stream().mapToDouble(Point::discharge).toArray());
    double[] c = scaled(points.stream().mapToDouble(Point::concentration).toArray());
    double twice = 0;
    for (int i = 0; i < q.length; i++) {
      int next = (i + 1) % q.length;
      twice += q[next] * c[i] - q[i] * c[next];
    }
    return twice / 2;
  }

  private static double[] scaled(double[] x) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : x) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    for (int i = 0; i < x.length; i++) {
      x[i] = high > low ? (x[i] - low) / (high - low) : 0;
    }
    return x;
  }
}
