package org.siltbench.balance.stable;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.calc.quantity.Mass;

/** The newest readings of one load, on its own clock and scale; bounded. */
final class Evidence {

  private static final int MOST = 2048;
  private static final double HALF = 0.5;

  private final Deque<Reading> recent = new ArrayDeque<>();
  private final Resolution resolution;
  private long origin;
  private long anchor;

  Evidence(Resolution resolution) {
    this.resolution = resolution;
  }

  void clear() {
    recent.clear();
  }

  boolean isEmpty() {
    return recent.isEmpty();
  }

  void add(Reading reading) {
    if (recent.isEmpty()) {
      origin = reading.nanos();
      anchor = Objects.requireNonNull(reading.mass()).nanograms();
    }
    if (recent.size() == MOST) {
      recent.removeFirst();
    }
    recent.addLast(reading);
  }

  Reading newest() {
    return Objects.requireNonNull(recent.peekLast());
  }

  /** Seconds since the first reading of the load. */
  double seconds(long nanos) {
    return recent.isEmpty() ? 0 : (nanos - origin) / 1e9;
  }

  /** Divisions above the first reading of the load. */
  double divisions(@Nullable Mass mass) {
    return (Objects.requireNonNull(mass).nanograms() - anchor) / (double) resolution.nanograms();
  }

  /** The reverse, in milligrams. */
  double milligrams(double divisions) {
    return (anchor + divisions * resolution.nanograms()) / 1e6;
  }

  List<Reading> since(double seconds) {
    List<Reading> out = new ArrayList<>();
    for (Reading r : recent) {
      if (seconds(r.nanos()) >= seconds) {
        out.add(r);
      }
    }
    return out;
  }

  /** The newest of some readings that shows a value; null if none does. */
  @Nullable Reading showing(List<Reading> some, double divisions) {
    for (int i = some.size() - 1; i >= 0; i--) {
      if (Math.abs(divisions(some.get(i).mass()) - divisions) < HALF) {
        return some.get(i);
      }
    }
    return null;
  }
}
