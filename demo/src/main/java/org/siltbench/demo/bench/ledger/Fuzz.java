package org.siltbench.demo.bench.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;
import org.siltbench.station.ledger.RealDisk;
import org.siltbench.station.ledger.VerifyLedger;

/** Random texts for the readers of JSON and of ledgers: read or refused, never anything else. */
final class Fuzz {

  private static final String[] BITS = {
    "{",
    "}",
    "[",
    "]",
    ":",
    ",",
    "\"",
    "\\",
    "\\u00e9",
    "1",
    "-",
    ".5",
    "e9",
    "true",
    "null",
    "é",
    "\"v\":1,",
    "\"bench\":\"BT24\",",
    "\"seq\":1,",
    "\"data\":{",
    "\"sum\":\"",
    "\n",
    "\u0000"
  };

  private Fuzz() {}

  static Map<String, Object> run(Path folder, int count, int seed) throws IOException {
    Random random = new Random(seed);
    Path file = folder.resolve("BT24.jsonl");
    long refused = 0;
    for (int i = 0; i < count; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(14); n >= 0; n--) {
        text.append(BITS[random.nextInt(BITS.length)]);
      }
      refused += refused(text.toString()) ? 1 : 0;
      if (i % 10 == 0) {
        Files.writeString(file, text);
        VerifyLedger.file(new RealDisk(), file, "BT24", line -> {});
      }
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("json", (long) count);
    result.put("json_refused", refused);
    result.put("ledgers", (long) (count + 9) / 10);
    return result;
  }

  private static boolean refused(String text) {
    try {
      Json.read(text);
      return false;
    } catch (NotJson e) {
      return true;
    }
  }
}
