package org.siltbench.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.siltbench.station.bench.Labs.weighing;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;

/** Two programs have one lab folder open when the disk fails under one of them. */
class AnotherWroteMeanwhileTest {

  @TempDir Path folder;
  private final Labs labs = new Labs(8);
  private final FailingDisk disk = new FailingDisk();
  private final FailingDisk otherDisk = new FailingDisk();
  private OpenLab bench;
  private OpenLab other;

  @BeforeEach
  void bothHaveWritten() {
    labs.create(folder.resolve("lab")).close();
    bench = open(disk);
    other = open(otherDisk);
    act(bench, "A1");
    act(other, "B1");
    act(bench, "A2");
  }

  private OpenLab open(FailingDisk on) {
    return LabFolder.open(folder.resolve("lab"), labs.setting(Clock.systemUTC(), on));
  }

  @AfterEach
  void close() {
    bench.close();
    other.close();
    assertTrue(VerifyLab.of(folder.resolve("lab"), List.of()).ok());
  }

  private static void act(OpenLab lab, String filter) {
    lab.act(view -> List.of(weighing(filter, "0.1")));
  }

  private Problem failedAct() {
    disk.failingForces = 2; // the act's, and that of taking it back
    return assertThrows(Problem.Outside.class, () -> act(bench, "A3"));
  }

  private List<String> filters() {
    return other.lines(other.code(), 1, 100).stream()
        .map(line -> line.replaceAll(".*\"filter\":\"(\\w+)\".*", "$1"))
        .toList();
  }

  @Test
  void aFailedActIsTakenBackWithoutTakingWhatTheOtherWroteSince() {
    Problem failed = failedAct();
    assertTrue(failed.safe().contains("not certain"), failed.safe());
    act(other, "B2");
    act(bench, "A4");
    act(other, "B3");
    assertEquals(List.of("A1", "B1", "A2", "B2", "A4", "B3"), filters());
  }

  @Test
  void whoWritesAfterAFailedActCutsTheEndAgainAndForcesThat() {
    act(other, "B2");
    int forces = otherDisk.forces;
    act(other, "B3");
    assertEquals(1, otherDisk.forces - forces, "alone, an act is forced once");
    failedAct();
    forces = otherDisk.forces;
    act(other, "B4");
    assertEquals(2, otherDisk.forces - forces, "the end, then the act");
  }
}
