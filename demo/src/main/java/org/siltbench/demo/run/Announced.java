package org.siltbench.demo.run;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.demo.robot.Answer;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;

/** Every mass that was announced, to be looked for in the ledger afterwards. */
final class Announced {

  private final Map<String, String> masses = new LinkedHashMap<>();

  /** Notes the weighings of an answer. */
  void note(Answer answer) {
    for (Map<?, ?> weighing : answer.rows("weighings")) {
      if (weighing.get("ledger") instanceof Map<?, ?> place) {
        masses.put(
            Answer.text(place, "bench") + '/' + Answer.text(place, "seq"),
            Answer.text(weighing, "filter") + ' ' + Answer.text(weighing, "mass_g"));
      }
    }
  }

  /** How many were announced. */
  int count() {
    return masses.size();
  }

  /** How many of them the ledger files do not hold as announced, read line by line. */
  int lost(Path lab) throws IOException {
    Map<String, String> written = new HashMap<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(lab.resolve("ledger"), "*.jsonl")) {
      for (Path file : files) {
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
          read(line, written);
        }
      }
    }
    int lost = 0;
    for (Map.Entry<String, String> one : masses.entrySet()) {
      lost += one.getValue().equals(written.get(one.getKey())) ? 0 : 1;
    }
    return lost;
  }

  private static void read(String line, Map<String, String> written) throws IOException {
    try {
      Map<String, ?> entry = Json.object(line);
      if (entry.get("data") instanceof Map<?, ?> data && data.containsKey("mass_g")) {
        written.put(
            entry.get("bench") + "/" + entry.get("seq"),
            Answer.text(data, "filter") + ' ' + Answer.text(data, "mass_g"));
      }
    } catch (NotJson e) {
      throw new IOException("the ledger has a line that is no JSON: " + line, e);
    }
  }
}
