package org.siltbench.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.siltbench.station.bench.Labs.weighing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.Disk;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.RealDisk;
import org.siltbench.station.register.Subject;

class TroubleTest {

  @TempDir Path folder;
  private final Labs labs = new Labs(8);

  private OpenLab create(Disk disk, Clock clock) {
    return LabFolder.create(folder.resolve("lab"), "North", false, labs.setting(clock, disk));
  }

  @Test
  void aNearlyFullDiskStopsNewWorkAndLosesNothing() {
    FailingDisk disk = new FailingDisk();
    try (OpenLab lab = create(disk, Clock.systemUTC())) {
      disk.space = 5 << 20;
      Problem full =
          assertThrows(Problem.Outside.class, () -> lab.act(view -> List.of(weighing("F", "1"))));
      assertTrue(full.what().contains("nearly full: 5 MiB"), full.what());
      disk.space = 1 << 30;
      lab.act(view -> List.of(weighing("F", "1")));
      assertEquals(1, lab.register().history(new Subject("filter", "F")).size());
    }
  }

  @Test
  void aFailedForceAnnouncesNothingAndWorkGoesOnOnceTheDiskIsWell() {
    FailingDisk disk = new FailingDisk();
    try (OpenLab lab = create(disk, Clock.systemUTC())) {
      disk.failingForces = 1;
      Problem failed =
          assertThrows(Problem.Outside.class, () -> lab.act(view -> List.of(weighing("F", "1"))));
      assertTrue(failed.safe().contains("was not recorded"), failed.safe());
      disk.failingForces = 3;
      Problem unsure =
          assertThrows(Problem.Outside.class, () -> lab.act(view -> List.of(weighing("F", "2"))));
      assertTrue(unsure.safe().contains("not certain"), unsure.safe());
      assertThrows(Problem.Outside.class, () -> lab.act(view -> List.of(weighing("F", "2"))));
      assertEquals(2, lab.act(view -> List.of(weighing("F", "3"))).get(0).ref().seq());
      assertEquals(1, lab.register().history(new Subject("filter", "F")).size());
    }
    assertTrue(VerifyLab.of(folder.resolve("lab"), List.of()).ok());
  }

  @Test
  void aLockThatCannotBeGivenBackIsToldAtOnceAndTakesNoEntryBack() {
    FailingDisk disk = new FailingDisk();
    try (OpenLab lab = create(disk, Clock.systemUTC())) {
      disk.failingReleases = 1;
      assertEquals(2, lab.act(view -> List.of(weighing("F", "1"))).get(0).ref().seq());
      assertEquals(1, labs.notes.size(), "told before the act returns");
      assertTrue(labs.notes.get(0).contains("lock could not be given back"), labs.notes.get(0));
      assertEquals(3, lab.act(view -> List.of(weighing("F", "2"))).get(0).ref().seq());
      assertEquals(1, labs.notes.size(), "given back with the next act");
      disk.failingReleases = 2;
      lab.act(view -> List.of(weighing("F", "3")));
      Problem failed =
          assertThrows(Problem.Outside.class, () -> lab.act(view -> List.of(weighing("F", "4"))));
      assertTrue(failed.safe().contains("was not recorded"), failed.safe());
      lab.act(view -> List.of(weighing("F", "4")));
      assertEquals(4, lab.register().history(new Subject("filter", "F")).size());
    }
    assertEquals(5, VerifyLab.of(folder.resolve("lab"), List.of()).own().entries());
  }

  @Test
  void theOrderIsKeptWhereTheClockJumpsBackAndTheZoneChanges() {
    Instant[] now = {Instant.parse("2026-10-25T00:59:00Z")};
    ZoneId[] zone = {ZoneId.of("Europe/Berlin")};
    Clock jumping =
        new Clock() {
          @Override
          public ZoneId getZone() {
            return zone[0];
          }

          @Override
          public Clock withZone(ZoneId other) {
            return this;
          }

          @Override
          public Instant instant() {
            return now[0];
          }
        };
    try (OpenLab lab = create(new RealDisk(), jumping)) {
      List<Entry> written = new ArrayList<>();
      for (int minutes : new int[] {2, 60, -4000, 0, 30, -1, 100_000, -100_000}) {
        now[0] = now[0].plusSeconds(60L * minutes);
        zone[0] = minutes < 0 ? ZoneOffset.ofHours(-9) : ZoneId.of("Europe/Berlin");
        written.addAll(lab.act(view -> List.of(weighing("F", "" + minutes))));
      }
      assertEquals(written, lab.register().history(new Subject("filter", "F")));
    }
    assertTrue(VerifyLab.of(folder.resolve("lab"), List.of()).ok());
  }

  @Test
  void twoHandsAtOnceKeepEveryRule() throws Exception {
    try (OpenLab one = create(new RealDisk(), Clock.systemUTC());
        OpenLab two = labs.open(folder.resolve("lab"))) {
      List<Thread> hands = new ArrayList<>();
      for (OpenLab lab : List.of(one, two, one, two)) {
        Thread hand = new Thread(() -> weighEachOnce(lab));
        hands.add(hand);
        hand.start();
      }
      for (Thread hand : hands) {
        hand.join();
      }
      one.act(view -> List.of());
      for (int i = 0; i < 30; i++) {
        assertEquals(1, one.register().history(new Subject("filter", "F" + i)).size());
      }
    }
    assertEquals(31, VerifyLab.of(folder.resolve("lab"), List.of()).own().entries());
  }

  private static void weighEachOnce(OpenLab lab) {
    for (int i = 0; i < 30; i++) {
      String filter = "F" + i;
      lab.act(
          view ->
              view.history(new Subject("filter", filter)).isEmpty()
                  ? List.of(weighing(filter, "0.1"))
                  : List.<Draft>of());
    }
  }

  @Test
  void everythingIsForItsOwnerOnly() throws Exception {
    create(new RealDisk(), Clock.systemUTC()).close();
    try (Stream<Path> files = Files.walk(folder.resolve("lab"))) {
      for (Path file : files.toList()) {
        String rights = PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
        assertTrue(rights.endsWith("------"), file + " " + rights);
      }
    }
  }

  @Test
  void aFolderThatCannotBeMadeIsExplained() throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "");
    Problem problem = assertThrows(Problem.Outside.class, () -> labs.create(file.resolve("lab")));
    assertTrue(problem.safe().contains("Nothing was changed"), problem.getMessage());
    assertThrows(Problem.WrongUse.class, () -> labs.open(folder));
  }

  @Test
  void aLongHistoryIsFoldedWhenItIsAskedFor() {
    try (OpenLab lab = create(new RealDisk(), Clock.systemUTC())) {
      List<Draft> many = new ArrayList<>();
      for (int i = 0; i < 320; i++) {
        many.add(weighing("F", "0." + i));
      }
      lab.act(view -> many);
      lab.act(view -> List.of(weighing("F", "0.999")));
      assertEquals(
          "seen-321", lab.register().state(new Subject("filter", "F")).orElseThrow().status());
      lab.act(view -> List.of(weighing("F", "0.998")));
      assertEquals("seen-322", lab.register().list("filter", "", "").get(0).status());
      String export = Labs.export(lab);
      lab.rebuild();
      assertEquals(export, Labs.export(lab));
    }
  }
}
