package org.siltbench.balance.stable;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.stream.LongStream;
import org.siltbench.balance.Reading;
import org.siltbench.calc.quantity.Mass;

/** Follows what the display shows while nothing is being weighed: the empty pan, or a bare dish. */
final class Level {

  private static final double SPAN_S = 1.2;
  private static final int LEAST = 4;
  private static final int MOST = 128;
  private static final double GAP_S = 3;
  private static final double CALM_DIVISIONS = 3;

  private static final double SURE = 2.5;
  private static final double STEADY_S = 4;

  private final Deque<Reading> recent = new ArrayDeque<>();
  private final Resolution resolution;
  private long calmSince = Long.MAX_VALUE;

  Level(Mass division) {
    resolution = new Resolution(division.nanograms());
  }

  void clear() {
    recent.clear();
    calmSince = Long.MAX_VALUE;
  }

  /** Takes a reading that carries a mass. */
  void add(Reading reading) {
    boolean changed = resolution.changedBy(reading, nanograms(reading));
    Reading newest = recent.peekLast();
    if (changed || (newest != null && reading.nanos() - newest.nanos() > GAP_S * 1e9)) {
      clear();
    }
    recent.addLast(reading);
    while (recent.size() > LEAST
        && (recent.size() > MOST
            || recent.getLast().nanos() - recent.getFirst().nanos() > SPAN_S * 1e9)) {
      recent.removeFirst();
    }
  }

  /** The division of the balance, or zero while it is not known. */
  Mass division() {
    return new Mass(resolution.nanograms());
  }

  /** True if the last second moved no more than a calm pan, or one in a steady draught, does. */
  boolean calm(Mass limit) {
    double spread = Math.max(CALM_DIVISIONS * resolution.nanograms(), (double) limit.nanograms());
    boolean calm = recent.size() >= LEAST && Math.abs(step()) <= spread;
    calmSince = calm ? Math.min(calmSince, recent.getLast().nanos()) : Long.MAX_VALUE;
    return calm;
  }

  /**
   * True if the value shown can stand for the pan: the last second shows no trend beyond one
   * division or its own noise, or a draught has kept it near one place for some seconds. The tail
   * of the load that went before is a trend: its end is waited for.
   */
  boolean settled(Mass limit) {
    if (!calm(limit)) {
      return false;
    }
    double noise = SURE * deviation() * Math.sqrt(4.0 / recent.size());
    boolean flat = Math.abs(step()) <= Math.max((double) resolution.nanograms(), noise);
    return flat || recent.getLast().nanos() - calmSince >= STEADY_S * 1e9;
  }

  /** The mean of the newer half less that of the older half, ng. */
  private double step() {
    int half = recent.size() / 2;
    return mean(half, recent.size()) - mean(0, half);
  }

  /** Standard deviation of one reading within the halves, ng: from differences of neighbours. */
  private double deviation() {
    double sum = 0;
    long before = nanograms(recent.getFirst());
    for (Reading r : recent) {
      double difference = nanograms(r) - (double) before;
      before = nanograms(r);
      sum += difference * difference;
    }
    return Math.sqrt(sum / 2 / (recent.size() - 1));
  }

  private double mean(int from, int to) {
    LongStream some = recent.stream().skip(from).limit(to - from).mapToLong(Level::nanograms);
    return some.average().orElse(Double.NaN);
  }

  /** The value shown that stands nearest to the mean of the last second. */
  Mass shown() {
    double mean = mean(0, recent.size());
    long nearest = nanograms(recent.getLast());
    for (Reading r : recent) {
      long shown = nanograms(r);
      nearest = Math.abs(shown - mean) < Math.abs(nearest - mean) ? shown : nearest;
    }
    return new Mass(nearest);
  }

  private static long nanograms(Reading reading) {
    return Objects.requireNonNull(reading.mass()).nanograms();
  }
}
