package org.siltbench.demo.bench.ledger;

import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.fault.FaultRun;
import org.siltbench.station.fault.TwoWriters;

/** Runs on a faulty disk; each ends with an error if an acknowledged entry is lost. */
final class DiskFaults {

  /** So many seeds belong to one piece of a long run. */
  private static final long PIECE = 1_000_000_000L;

  private DiskFaults() {}

  static Map<String, Object> oneWriter(int piece, int runs) {
    long acknowledged = 0;
    long failed = 0;
    long unsure = 0;
    long cuts = 0;
    long torn = 0;
    for (long seed = piece * PIECE; seed < piece * PIECE + runs; seed++) {
      FaultRun.Outcome outcome = FaultRun.of(seed);
      acknowledged += outcome.acknowledged();
      failed += outcome.failedWrites();
      unsure += outcome.failedRecoveries();
      cuts += outcome.powerCuts();
      torn += outcome.tornTails();
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("runs", (long) runs);
    result.put("acknowledged", acknowledged);
    result.put("faults", failed + unsure + cuts);
    result.put("failed_acts", failed);
    result.put("failed_recoveries", unsure);
    result.put("power_cuts", cuts);
    result.put("torn_tails", torn);
    result.put("lost", 0L);
    return result;
  }

  static Map<String, Object> twoWriters(int piece, int runs) {
    long acknowledged = 0;
    long failed = 0;
    long unsure = 0;
    long cuts = 0;
    long handOvers = 0;
    for (long seed = piece * PIECE; seed < piece * PIECE + runs; seed++) {
      TwoWriters.Outcome outcome = TwoWriters.of(seed);
      acknowledged += outcome.acknowledged();
      failed += outcome.failedWrites();
      unsure += outcome.failedRecoveries();
      cuts += outcome.powerCuts();
      handOvers += outcome.handOvers();
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("runs", (long) runs);
    result.put("acknowledged", acknowledged);
    result.put("faults", failed + unsure + cuts);
    result.put("failed_acts", failed);
    result.put("failed_recoveries", unsure);
    result.put("power_cuts", cuts);
    result.put("hand_overs", handOvers);
    result.put("lost", 0L);
    return result;
  }
}
