package org.siltbench.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.ledger.RealDisk;
import org.siltbench.station.ledger.VerifyLedger;

class KillIT {

  @TempDir Path folder;
  private final List<Process> started = new ArrayList<>();

  @Test
  void everyAnnouncedWeighingSurvivesFiftyKillsOfTwoWriters() throws Exception {
    kills(50, 11);
  }

  @Test
  @Tag("long")
  void everyAnnouncedWeighingSurvivesAThousandKills() throws Exception {
    kills(1000, 12);
  }

  private void kills(int count, long seed) throws Exception {
    Random random = new Random(seed);
    Labs labs = new Labs(seed);
    String code;
    try (OpenLab lab = labs.create(folder.resolve("lab"))) {
      code = lab.code();
    }
    List<String> announced = new ArrayList<>();
    Process[] writers = {start(), start()};
    for (int kill = 0; kill < count; kill++) {
      int which = random.nextInt(2);
      announced.addAll(killed(writers[which], 1 + random.nextInt(25)));
      writers[which] = start();
    }
    for (Process writer : writers) {
      announced.addAll(killed(writer, 1));
    }
    try (OpenLab lab = labs.open(folder.resolve("lab"))) {
      lab.act(view -> List.of(Labs.weighing("last", "0.1")));
    }
    Set<Object> recorded = new HashSet<>();
    Path ledger = folder.resolve("lab").resolve("ledger").resolve(code + ".jsonl");
    VerifyLedger.Checked checked =
        VerifyLedger.file(
            new RealDisk(), ledger, code, line -> recorded.add(line.entry().data().get("filter")));
    assertEquals(List.of(), checked.problems());
    assertTrue(announced.size() >= count, "announced: " + announced.size());
    announced.removeAll(recorded);
    assertEquals(List.of(), announced, "lost");
    assertTrue(VerifyLab.of(folder.resolve("lab"), List.of()).ok());
  }

  @AfterEach
  void stop() {
    started.forEach(Process::destroyForcibly);
  }

  private Process start() throws IOException {
    Process writer = Writer.start(folder.resolve("lab"));
    started.add(writer);
    return writer;
  }

  /** Kills a writer after so many announcements; answers those that came out whole. */
  private static List<String> killed(Process writer, int after) throws Exception {
    List<String> lines = new ArrayList<>();
    try (BufferedReader out = writer.inputReader()) {
      String line = out.readLine();
      while (line != null) {
        if (line.endsWith(";")) {
          lines.add(line.substring(0, line.length() - 1));
        }
        if (lines.size() == after) {
          writer.toHandle().destroyForcibly(); // leaves what was announced to be read
        }
        line = out.readLine();
      }
    }
    assertEquals(137, writer.waitFor(), "killed, not ended");
    return lines;
  }
}
