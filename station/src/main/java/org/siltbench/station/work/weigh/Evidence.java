package org.siltbench.station.work.weigh;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.siltbench.balance.Reading;

/** The raw lines behind a mass, each with its milliseconds before the last one. */
final class Evidence {

  private static final int MOST_BYTES = 4096;
  private static final long NANOS_PER_MILLI = 1_000_000;

  private Evidence() {}

  /** The newest lines that fit into 4 KiB, oldest first: {@code "-200 raw text"}. */
  static List<String> of(List<Reading> readings) {
    Deque<String> kept = new ArrayDeque<>();
    long end = readings.isEmpty() ? 0 : readings.get(readings.size() - 1).nanos();
    int room = MOST_BYTES;
    for (int i = readings.size() - 1; i >= 0; i--) {
      Reading reading = readings.get(i);
      String line = (reading.nanos() - end) / NANOS_PER_MILLI + " " + reading.raw();
      room -= line.getBytes(StandardCharsets.UTF_8).length + 1;
      if (room < 0) {
        break;
      }
      kept.addFirst(line);
    }
    return List.copyOf(kept);
  }
}
