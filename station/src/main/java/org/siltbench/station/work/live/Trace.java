package org.siltbench.station.work.live;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.calc.quantity.Mass;

/** The masses of the last minute, as a picture: points and a band between 0 and 1. */
public final class Trace {

  private static final double SPAN_NANOS = 60e9;
  private static final long SCALED_NANOS = 8_000_000_000L;
  private static final double LEAST_SPAN_STEPS = 5;
  private static final int MOST = 4096;

  /** A point; x from a minute ago (0) to now (1), y from the bottom (0) to the top (1). */
  public record Point(double x, double y) {}

  /**
   * The picture.
   *
   * @param lines pieces of the curve; a gap parts them
   * @param low bottom of the stability band, or NaN where there is none
   * @param high its top
   */
  public record Picture(List<List<Point>> lines, double low, double high) {}

  private record Sample(long nanos, double value) {}

  private final Deque<Sample> samples = new ArrayDeque<>();
  private @Nullable Mass tolerance;
  private @Nullable Mass centre;

  /** Takes a reading; one without a mass parts the curve. */
  public synchronized void add(Reading reading) {
    Mass mass = reading.mass();
    add(new Sample(reading.nanos(), mass == null ? Double.NaN : mass.nanograms()));
  }

  /** The link was lost: the curve is parted. */
  public synchronized void gap(long nanos) {
    add(new Sample(nanos, Double.NaN));
  }

  private void add(Sample sample) {
    samples.addLast(sample);
    while (samples.size() > MOST || sample.nanos() - samples.getFirst().nanos() > SPAN_NANOS) {
      samples.removeFirst();
    }
  }

  /** Shows the band of masses that count as settled around this one; null for none. */
  public synchronized void band(@Nullable Mass around, Mass plusMinus) {
    centre = around;
    tolerance = plusMinus;
  }

  /**
   * The picture of now. Its scale fits what the display did in the last seconds, never less than a
   * few times the band; what lay far off before is cut at the edge.
   */
  public synchronized Picture picture() {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    long since = samples.isEmpty() ? 0 : samples.getLast().nanos() - SCALED_NANOS;
    for (Sample sample : samples) {
      if (!Double.isNaN(sample.value()) && sample.nanos() >= since) {
        least = Math.min(least, sample.value());
        most = Math.max(most, sample.value());
      }
    }
    if (least > most) {
      return new Picture(List.of(), Double.NaN, Double.NaN);
    }
    Mass width = tolerance;
    double step = width == null ? 1e5 : Math.max(1, width.nanograms());
    double middle = (least + most) / 2;
    double half = Math.max((most - least) / 2, LEAST_SPAN_STEPS * step / 2) * 1.15;
    return new Picture(lines(middle, half), band(middle, half, -step), band(middle, half, step));
  }

  private double band(double middle, double half, double off) {
    Mass around = centre;
    return around == null ? Double.NaN : y(around.nanograms() + off, middle, half);
  }

  private static double y(double value, double middle, double half) {
    return Math.max(0, Math.min(1, 0.5 + (value - middle) / (2 * half)));
  }

  private List<List<Point>> lines(double middle, double half) {
    List<List<Point>> lines = new ArrayList<>();
    List<Point> line = new ArrayList<>();
    long end = samples.getLast().nanos();
    for (Sample sample : samples) {
      if (Double.isNaN(sample.value())) {
        line = part(lines, line);
      } else {
        double x = 1 - (end - sample.nanos()) / SPAN_NANOS;
        line.add(new Point(x, y(sample.value(), middle, half)));
      }
    }
    part(lines, line);
    return lines;
  }

  private static List<Point> part(List<List<Point>> lines, List<Point> line) {
    if (line.isEmpty()) {
      return line;
    }
    lines.add(line);
    return new ArrayList<>();
  }
}
