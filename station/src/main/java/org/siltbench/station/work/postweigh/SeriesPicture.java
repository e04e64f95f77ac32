package org.siltbench.station.work.postweigh;

import java.util.List;
import java.util.stream.IntStream;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Series;
import org.siltbench.station.life.Weighed;

/**
 * The masses of a filter after each drying, as a small picture.
 *
 * @param points one for each drying cycle, oldest first
 */
public record SeriesPicture(List<Point> points) {

  private static final long LEAST_SPAN_NANOGRAMS = 200_000;

  /**
   * One mass.
   *
   * @param x from 0, the first, to 1, the last
   * @param y from 0, the least, to 1, the most; never less than 0.2 mg apart in full
   * @param grams the digits
   * @param changeMg against the one before, mg; empty for the first
   */
  public record Point(double x, double y, String grams, String changeMg) {}

  /** Copies the list. */
  public SeriesPicture {
    points = List.copyOf(points);
  }

  /** The picture of a filter. */
  public static SeriesPicture of(FilterState filter) {
    List<Weighed> masses = Series.onePerCycle(filter.post());
    long least = masses.stream().mapToLong(w -> w.mass().nanograms()).min().orElse(0);
    long most = masses.stream().mapToLong(w -> w.mass().nanograms()).max().orElse(0);
    double span = Math.max(most - least, LEAST_SPAN_NANOGRAMS);
    double bottom = (least + most) / 2.0 - span / 2;
    return new SeriesPicture(
        IntStream.range(0, masses.size()).mapToObj(i -> point(masses, i, bottom, span)).toList());
  }

  private static Point point(List<Weighed> masses, int i, double bottom, double span) {
    Weighed weighed = masses.get(i);
    double x = masses.size() == 1 ? 0.5 : (double) i / (masses.size() - 1);
    Mass change = i == 0 ? null : weighed.mass().minus(masses.get(i - 1).mass());
    return new Point(
        x,
        (weighed.mass().nanograms() - bottom) / span,
        weighed.digits(),
        change == null ? "" : change.toMilligrams());
  }
}
