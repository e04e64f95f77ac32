package org.siltbench.demo.bench.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.fault.FaultRun;
import org.siltbench.station.json.Json;

/** What the ledger went through, and what it lost. */
public final class FaultsMeasure {

  private FaultsMeasure() {}

  /**
   * Runs it; {@code --kills N}, {@code --faults N}, {@code --partitions N}, {@code --fuzz N},
   * {@code --seed N} for the kills, {@code --dir DIR}. Anything lost or not found ends it with an
   * error.
   */
  public static String run(String[] args) throws IOException, InterruptedException {
    Path folder = Bits.folder(args);
    try {
      Map<String, Object> result = new LinkedHashMap<>();
      result.put("measure", "faults");
      result.put(
          "kills",
          Kills.run(folder, Bits.number(args, "--kills", 20), Bits.number(args, "--seed", 3)));
      result.put("file_faults", faults(Bits.number(args, "--faults", 3000)));
      result.put("flipped_bytes", Flips.run(folder));
      result.put("partitions", Partitions.run(folder, Bits.number(args, "--partitions", 10)));
      result.put("fuzz_inputs", Fuzz.run(folder, Bits.number(args, "--fuzz", 20_000)));
      result.put("lost_acknowledged_masses", 0L);
      return Json.write(result);
    } finally {
      Bits.remove(folder);
    }
  }

  /** Every run ends with an error if an acknowledged entry is lost. */
  private static Map<String, Object> faults(int runs) {
    long acknowledged = 0;
    long failed = 0;
    long cuts = 0;
    long torn = 0;
    for (int seed = 0; seed < runs; seed++) {
      FaultRun.Outcome outcome = FaultRun.of(seed);
      acknowledged += outcome.acknowledged();
      failed += outcome.failedWrites() + outcome.failedRecoveries();
      cuts += outcome.powerCuts();
      torn += outcome.tornTails();
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("runs", (long) runs);
    result.put("acknowledged", acknowledged);
    result.put("failed_writes", failed);
    result.put("power_cuts", cuts);
    result.put("torn_tails", torn);
    result.put("lost", 0L);
    return result;
  }
}
