package org.siltbench.demo.bench.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.ledger.RealDisk;
import org.siltbench.station.ledger.VerifyLedger;

/** Flips one bit at every place of a sample ledger in turn. */
final class Flips {

  private Flips() {}

  static Map<String, Object> run(Path folder, int seed) throws IOException {
    Path lab = folder.resolve("flipped");
    Random random = new Random(seed);
    String code;
    try (OpenLab open = LabFolder.create(lab, "flipped", false, Bits.setting(1))) {
      code = open.code();
      for (int i = 0; i < 6; i++) {
        String filter = "F" + i;
        open.act(view -> List.of(Bits.weighing(filter, "pre", random, 2)));
        open.act(
            view ->
                List.of(
                    Bits.weighing(filter, "post", random, 1),
                    Bits.weighing(filter + "b", "post", random, 1)));
      }
    }
    byte[] good = Files.readAllBytes(lab.resolve("ledger").resolve(code + ".jsonl"));
    Path file = folder.resolve(code + ".jsonl");
    long line = 1;
    for (int at = 0; at < good.length; at++) {
      byte[] bad = good.clone();
      bad[at] ^= (byte) (1 << random.nextInt(8));
      Files.write(file, bad);
      var problems = VerifyLedger.file(new RealDisk(), file, code, read -> {}).problems();
      if (problems.isEmpty() || problems.get(0).line() != line) {
        throw new IllegalStateException("a flipped byte at " + at + " was not found");
      }
      line += good[at] == '\n' ? 1 : 0;
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("positions", (long) good.length);
    result.put("found_and_located", (long) good.length);
    return result;
  }
}
