package org.siltbench.station.fault;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class FaultRunTest {

  @Test
  void noAcknowledgedEntryIsLostInSomeThousandRuns() {
    runs(0, 3_000);
  }

  /**
   * A power cut that kept the last byte of one block from the disk, and nothing else of its line.
   */
  @Test
  void aSingleLostByteIsNoDamage() {
    assertTrue(FaultRun.of(9_103_000_001_274L).acknowledged() > 0);
  }

  @Test
  @Tag("long")
  void noAcknowledgedEntryIsLostInAHundredThousandRuns() {
    runs(1_000_000, 100_000);
  }

  private static void runs(long first, int count) {
    long acknowledged = 0;
    long failed = 0;
    long cuts = 0;
    long torn = 0;
    long kept = 0;
    long unsure = 0;
    for (long seed = first; seed < first + count; seed++) {
      FaultRun.Outcome outcome = FaultRun.of(seed);
      acknowledged += outcome.acknowledged();
      failed += outcome.failedWrites();
      cuts += outcome.powerCuts();
      torn += outcome.tornTails();
      kept += outcome.keptUnacknowledged();
      unsure += outcome.failedRecoveries();
    }
    assertTrue(acknowledged > count, "entries: " + acknowledged);
    assertTrue(failed > count / 2, "failed writes: " + failed);
    assertTrue(cuts > count / 4, "power cuts: " + cuts);
    assertTrue(torn > count / 50, "torn tails: " + torn);
    assertTrue(kept > count / 50, "kept: " + kept);
    assertTrue(unsure > count / 50, "failed recoveries: " + unsure);
  }
}
