package org.siltbench.station.window.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.TestDesk;

/** A lab folder that does not answer. */
class WatchTest {

  @TempDir Path folder;

  @Test
  void a_busy_lab_is_told_after_three_seconds_and_taken_back_when_it_answers() {
    Deque<Runnable> waiting = new ArrayDeque<>();
    try (TestDesk bench = new TestDesk(folder, Locale.ENGLISH, waiting::add)) {
      Desk desk = bench.desk();
      for (int second = 0; second < 10; second++) {
        desk.tick();
      }
      Notice told = desk.notices().list().get(0);
      assertEquals("busy", told.about());
      assertTrue(told.safe().contains("on the disk"), told.safe());
      while (!waiting.isEmpty()) {
        waiting.poll().run();
      }
      assertEquals(0, desk.notices().list().size());
    }
  }
}
