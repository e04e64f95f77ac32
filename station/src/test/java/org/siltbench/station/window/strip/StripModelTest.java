package org.siltbench.station.window.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Filters;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.LedgerFacts;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.work.weigh.Measured;
import org.siltbench.station.work.weigh.WeighEvent;

/** The last mass on the strip, and taking it back. */
class StripModelTest {

  @TempDir Path folder;

  @Test
  void the_last_mass_is_taken_back_by_a_correction_and_both_stay_in_the_ledger() {
    try (TestDesk bench = new TestDesk(folder)) {
      String id = bench.batch("storm", "sm-2540d-23", "sample").get(0);
      StripModel strip = bench.assembly().strip();
      assertEquals(Optional.empty(), strip.last().get());
      Entry entry = bench.pre(id, "0.11234");
      strip.told(
          new WeighEvent.Recorded(entry, Measured.keyed("0.11234", "B1", null)), bench.desk());
      StripModel.Last last = strip.last().get().orElseThrow();
      assertEquals(id, last.what());
      assertEquals("0.11234", last.grams());
      assertEquals(List.of(Cues.Cue.RECORDED), bench.heard());

      strip.undo(bench.desk(), "Taken back at the bench.");
      assertEquals(Optional.empty(), strip.last().get());
      assertTrue(Filters.require(bench.desk().lab().register(), id).preMass().isEmpty());
      List<String> kinds =
          LedgerFacts.of(bench.desk().lab(), "weighing", "corrected").stream()
              .map(fact -> fact.substring(0, fact.indexOf(' ')))
              .toList();
      assertEquals(List.of("weighing", "corrected"), kinds);
    }
  }

  @Test
  void a_refused_load_is_heard_and_changes_no_last_mass() {
    try (TestDesk bench = new TestDesk(folder)) {
      StripModel strip = bench.assembly().strip();
      strip.told(new WeighEvent.Declined("F", Words.verbatim("two filters"), null), bench.desk());
      assertEquals(Optional.empty(), strip.last().get());
      assertEquals(List.of(Cues.Cue.REFUSED), bench.heard());
    }
  }
}
