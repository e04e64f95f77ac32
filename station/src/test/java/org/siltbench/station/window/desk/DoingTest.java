package org.siltbench.station.window.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.TestDesk;

/** Long work shows how far it is only where it takes long, and stops when it is asked to. */
class DoingTest {

  @TempDir Path folder;

  @Test
  void work_is_shown_after_more_than_a_second_and_stops_before_its_next_step() {
    try (TestDesk bench = new TestDesk(folder)) {
      Doing doing = new Doing(bench.desk());
      doing.begin();
      assertTrue(doing.goesOn("tables", 0, 3));
      bench.desk().tick();
      assertFalse(doing.shown().get(), "not for what is over in a moment");
      bench.desk().tick();
      assertTrue(doing.shown().get());
      assertTrue(doing.goesOn("report", 1, 3));
      assertEquals("report", doing.what().get());
      assertEquals(1 / 3.0, doing.share().get(), 1e-9);
      doing.stop();
      assertFalse(doing.goesOn("pictures", 2, 3));
      doing.end();
      bench.desk().tick();
      assertFalse(doing.shown().get());

      doing.begin();
      assertTrue(doing.goesOn("tables", 0, 3), "a stop counts once");
    }
  }
}
