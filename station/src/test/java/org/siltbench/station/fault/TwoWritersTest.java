package org.siltbench.station.fault;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.siltbench.station.ledger.Pen;

class TwoWritersTest {

  @Test
  void noAcknowledgedEntryIsLostWhereTwoProcessesWriteInTurn() {
    runs(0, 200);
  }

  @Test
  @Tag("long")
  void noAcknowledgedEntryIsLostInTwentyThousandRuns() {
    runs(1_000_000, 20_000);
  }

  @Test
  void aWriterThatDoesNotSeeTheOtherLosesEntries() {
    int lost = 0;
    for (long seed = 0; seed < 20; seed++) {
      lost += loses(seed) ? 1 : 0;
    }
    assertTrue(lost > 5, "runs with losses: " + lost);
  }

  private static boolean loses(long seed) {
    try {
      TwoWriters.of(seed, () -> Pen.ALONE);
      return false;
    } catch (AssertionError e) {
      return true;
    }
  }

  private static void runs(long first, int count) {
    long acknowledged = 0;
    long failed = 0;
    long unsure = 0;
    long cuts = 0;
    for (long seed = first; seed < first + count; seed++) {
      TwoWriters.Outcome outcome = TwoWriters.of(seed);
      acknowledged += outcome.acknowledged();
      failed += outcome.failedWrites();
      unsure += outcome.failedRecoveries();
      cuts += outcome.powerCuts();
    }
    assertTrue(acknowledged > 20L * count, "entries: " + acknowledged);
    assertTrue(failed > 5L * count, "failed writes: " + failed);
    assertTrue(unsure > count, "failed recoveries: " + unsure);
    assertTrue(cuts > count, "power cuts: " + cuts);
  }
}
