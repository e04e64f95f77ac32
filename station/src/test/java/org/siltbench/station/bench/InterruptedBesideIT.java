package org.siltbench.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.ledger.RealDisk;
import org.siltbench.station.ledger.VerifyLedger;

class InterruptedBesideIT {

  private static final int ACTS = 300;
  private static final int BESIDE = 20;
  private static final int MOST_ACTS = 100 * ACTS;

  @TempDir Path folder;

  /** The caller is interrupted while it waits for the lab's lock, too, and while it reads on. */
  @Test
  void anInterruptedCallerAndAnotherProcessWriteOneChain() throws Exception {
    Labs labs = new Labs(5);
    Path place = folder.resolve("lab");
    Set<Object> announced = new HashSet<>();
    String code;
    Process other = null;
    try (OpenLab lab = labs.create(place)) {
      code = lab.code();
      other = Writer.start(place);
      BufferedReader out = other.inputReader();
      announced.add(announced(out.readLine()));
      Interrupter interrupter = new Interrupter(3);
      // On a quick machine ours are done before the other process has had its share of the lock.
      int beside = 1;
      for (int i = 0; i < ACTS || (beside < BESIDE && i < MOST_ACTS); i++) {
        String filter = "F" + i;
        lab.act(view -> List.of(Labs.weighing(filter, "0.1")));
        announced.add(filter);
        interrupter.look();
        for (; out.ready(); beside++) {
          announced.add(announced(out.readLine()));
        }
      }
      int[] counts = interrupter.sentAndFound();
      assertEquals(counts[0], counts[1], "interrupts sent, and found after the act");
      other.toHandle().destroyForcibly();
      out.lines()
          .filter(line -> line.endsWith(";"))
          .forEach(line -> announced.add(announced(line)));
    } finally {
      if (other != null) {
        other.destroyForcibly();
      }
    }
    assertTrue(announced.size() >= ACTS + BESIDE, "of both: " + announced.size());
    Set<Object> recorded = new HashSet<>();
    VerifyLedger.Checked checked =
        VerifyLedger.file(
            new RealDisk(),
            place.resolve("ledger").resolve(code + ".jsonl"),
            code,
            line -> recorded.add(line.entry().data().get("filter")));
    assertEquals(List.of(), checked.problems());
    announced.removeAll(recorded);
    assertEquals(Set.of(), announced, "lost");
  }

  private static String announced(String line) {
    return line.substring(0, line.length() - 1);
  }
}
