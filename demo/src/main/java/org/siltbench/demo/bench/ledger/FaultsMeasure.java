package org.siltbench.demo.bench.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.json.Json;

/** What the ledger went through, and what it lost. */
public final class FaultsMeasure {

  private FaultsMeasure() {}

  /**
   * Runs it; {@code --kills N}, {@code --faults N} with one writer, {@code --writers N} with two in
   * turn, {@code --partitions N}, {@code --fuzz N}; {@code --seed N}, so that a long run can be
   * done in pieces that repeat nothing; {@code --dir DIR}. Anything lost or not found ends it with
   * an error.
   */
  public static String run(String[] args) throws IOException, InterruptedException {
    Path folder = Bits.folder(args);
    int seed = Bits.number(args, "--seed", 3);
    try {
      Map<String, Object> result = new LinkedHashMap<>();
      result.put("measure", "faults");
      result.put("seed", (long) seed);
      result.put("kills", Kills.run(folder, Bits.number(args, "--kills", 20), seed));
      result.put("file_faults", DiskFaults.oneWriter(seed, Bits.number(args, "--faults", 3000)));
      result.put(
          "file_faults_two_writers",
          DiskFaults.twoWriters(seed, Bits.number(args, "--writers", 300)));
      result.put("flipped_bytes", Flips.run(folder, seed));
      result.put("partitions", Partitions.run(folder, Bits.number(args, "--partitions", 10), seed));
      result.put("fuzz_inputs", Fuzz.run(folder, Bits.number(args, "--fuzz", 20_000), seed));
      result.put("lost_acknowledged_masses", 0L);
      return Json.write(result);
    } finally {
      Bits.remove(folder);
    }
  }
}
