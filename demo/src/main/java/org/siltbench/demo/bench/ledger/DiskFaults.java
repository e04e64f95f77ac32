package org.siltbench.demo.bench.ledger;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongFunction;
import org.siltbench.station.fault.FaultRun;
import org.siltbench.station.fault.TwoWriters;

/** Runs on a faulty disk; each ends with an error if an acknowledged entry is lost. */
final class DiskFaults {

  /** So many seeds belong to one piece of a long run. */
  private static final long PIECE = 1_000_000_000L;

  private DiskFaults() {}

  static Map<String, Object> oneWriter(int piece, int runs) {
    return summed(
        piece,
        runs,
        "torn_tails",
        seed -> {
          FaultRun.Outcome run = FaultRun.of(seed);
          return new long[] {
            run.acknowledged(),
            run.failedWrites(),
            run.failedRecoveries(),
            run.powerCuts(),
            run.tornTails()
          };
        });
  }

  static Map<String, Object> twoWriters(int piece, int runs) {
    return summed(
        piece,
        runs,
        "hand_overs",
        seed -> {
          TwoWriters.Outcome run = TwoWriters.of(seed);
          return new long[] {
            run.acknowledged(),
            run.failedWrites(),
            run.failedRecoveries(),
            run.powerCuts(),
            run.handOvers()
          };
        });
  }

  /**
   * Runs a piece.
   *
   * @param own what the last count of this kind of run is called
   * @param run gives acknowledged entries, failed acts, failed recoveries, power cuts, and its own
   */
  private static Map<String, Object> summed(
      int piece, int runs, String own, LongFunction<long[]> run) {
    long[] sums = new long[5];
    for (long seed = piece * PIECE; seed < piece * PIECE + runs; seed++) {
      long[] counts = run.apply(seed);
      Arrays.setAll(sums, i -> sums[i] + counts[i]);
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("runs", (long) runs);
    result.put("acknowledged", sums[0]);
    result.put("faults", sums[1] + sums[2] + sums[3]);
    result.put("failed_acts", sums[1]);
    result.put("failed_recoveries", sums[2]);
    result.put("power_cuts", sums[3]);
    result.put(own, sums[4]);
    result.put("lost", 0L);
    return result;
  }
}
