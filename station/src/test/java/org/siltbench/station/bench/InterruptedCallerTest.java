package org.siltbench.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.siltbench.station.bench.Labs.weighing;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.Disk;
import org.siltbench.station.ledger.RealDisk;
import org.siltbench.station.ledger.VerifyLedger;
import org.siltbench.station.register.Subject;

/** Acts are done on the caller's thread, which anybody may interrupt at any moment. */
class InterruptedCallerTest {

  @TempDir Path folder;
  private final Labs labs = new Labs(8);
  private final List<String> announced = new ArrayList<>();
  private int failed;

  @Test
  void anInterruptedCallerHasItsEntryRecordedAndItsInterruptKept() throws Exception {
    interrupted(400, new RealDisk());
    assertEquals(400, announced.size());
    assertEquals(List.of(), labs.notes, "neither the register nor the lock was harmed");
  }

  @Test
  void onAFailingDiskAnInterruptedCallersEntryIsAnnouncedOrNotWritten() throws Exception {
    interrupted(400, new FailingDisk());
    assertTrue(failed > 25, "failed acts: " + failed);
  }

  @Test
  @Tag("long")
  void thousandsOfInterruptsHarmNothing() throws Exception {
    interrupted(20_000, new RealDisk());
    assertEquals(List.of(), labs.notes);
  }

  private void interrupted(int acts, Disk disk) throws Exception {
    Random random = new Random(acts);
    try (OpenLab lab = create(disk)) {
      Interrupter interrupter = new Interrupter(acts);
      for (int i = 0; i < acts; i++) {
        if (disk instanceof FailingDisk failing) {
          failing.failingForces = Math.max(0, random.nextInt(12) - 9);
        }
        act(lab, "F" + i);
        interrupter.look();
      }
      int[] counts = interrupter.sentAndFound();
      assertEquals(counts[0], counts[1], "interrupts sent, and found after the act");
      assertTrue(counts[0] > acts / 10, "interrupts: " + counts[0]);
      Thread.currentThread().interrupt();
    }
    assertTrue(Thread.interrupted(), "found after the lab was closed");
    assertEquals(announced, recorded());
  }

  private OpenLab create(Disk disk) {
    return LabFolder.create(
        folder.resolve("lab"), "North", false, labs.setting(Clock.systemUTC(), disk));
  }

  /** As a bench does: a question, and an act whose rule asks again. */
  private void act(OpenLab lab, String filter) {
    Subject subject = new Subject("filter", filter);
    assertEquals(0, lab.register().history(subject).size());
    try {
      lab.act(
          view -> {
            assertTrue(view.state(subject).isEmpty());
            return List.of(weighing(filter, "0.1"));
          });
      announced.add(filter);
      assertEquals(1, lab.register().history(subject).size());
    } catch (Problem.Outside e) {
      failed++;
    }
  }

  private List<String> recorded() throws Exception {
    List<String> filters = new ArrayList<>();
    Path lab = folder.resolve("lab");
    String code = LabFolder.readCode(lab);
    VerifyLedger.Checked checked =
        VerifyLedger.file(
            new RealDisk(),
            lab.resolve("ledger").resolve(code + ".jsonl"),
            code,
            line -> filters.add(String.valueOf(line.entry().data().get("filter"))));
    assertEquals(List.of(), checked.problems());
    return filters.subList(1, filters.size());
  }
}
