package org.siltbench.station.window.strip;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.Timebase;
import org.siltbench.station.window.RobotWindow;

/** Hours of readings through the whole window, in time that runs faster. */
class SoakIT {

  private static final int SPEED = 400;
  private static final long MOST_GROWTH_BYTES = 4L << 20;

  @TempDir Path folder;

  @Test
  @Timeout(30)
  void ten_minutes_of_readings_pass_through() {
    assertTrue(soak(1, 600).size() == 1);
  }

  @Test
  @Tag("long")
  @Timeout(600)
  void ten_hours_at_ten_a_second_leave_the_heap_flat() throws IOException {
    List<Long> heap = soak(10, 3600);
    Files.writeString(
        Path.of("target", "window-soak.txt"), "heap after each hour, bytes: " + heap + "\n");
    long early = heap.subList(1, 4).stream().mapToLong(Long::longValue).max().orElseThrow();
    long late = heap.subList(7, 10).stream().mapToLong(Long::longValue).min().orElseThrow();
    assertTrue(late - early < MOST_GROWTH_BYTES, "heap after each hour, bytes: " + heap);
  }

  /** The heap in use after each stretch of simulated seconds, once it has been swept. */
  private List<Long> soak(int stretches, int seconds) {
    List<Long> heap = new ArrayList<>();
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"))) {
      RobotWindow.on(
          () -> {
            window.assembly().connect("practice?speed=" + SPEED);
            return true;
          });
      window.awaitText("state", "Ready");
      Timebase clock = window.desk().balance().orElseThrow().time();
      long start = clock.nanos();
      for (int i = 1; i <= stretches; i++) {
        while (clock.nanos() - start < i * seconds * 1_000_000_000L) {
          LockSupport.parkNanos(20_000_000L);
        }
        heap.add(used());
      }
    }
    return heap;
  }

  private static long used() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
