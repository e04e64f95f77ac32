package org.siltbench.station.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.siltbench.station.bench.Labs.weighing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Labs;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.register.Subject;

class BackupTest {

  @TempDir Path folder;

  @Test
  void aBackupMadeWhileWeighingGoesOnIsWholeAndBecomesANewBench() throws Exception {
    Path stick = Files.createDirectory(folder.resolve("stick"));
    Backup.Made made;
    String old;
    try (OpenLab lab = new Labs(1).create(folder.resolve("lab"))) {
      old = lab.code();
      AtomicBoolean stop = new AtomicBoolean();
      AtomicInteger weighed = new AtomicInteger();
      Thread hands =
          new Thread(
              () -> {
                while (!stop.get()) {
                  lab.act(view -> List.of(weighing("F" + weighed.get(), "0.1")));
                  weighed.incrementAndGet();
                }
              });
      hands.start();
      while (weighed.get() < 20) {
        Thread.onSpinWait();
      }
      made = Backup.of(lab, stick);
      stop.set(true);
      hands.join();
    }
    assertTrue(made.entries() >= 20);
    assertFalse(Files.exists(made.folder().resolve("bench.key")));
    VerifyLab.Report report = VerifyLab.of(folder.resolve("lab"), List.of());
    assertTrue(report.ok(), report.problems().toString());
    assertEquals("backup", report.anchors().get(0).anchor().kind());

    Labs labs = new Labs(2);
    try (OpenLab lab =
        Restore.from(made.folder(), folder.resolve("new"), "North again", labs.setting())) {
      assertNotEquals(old, lab.code());
      assertEquals(1, lab.register().history(new Subject("filter", "F7")).size());
      Entry created = lab.register().asWritten(new EntryRef(lab.code(), 1)).orElseThrow();
      assertEquals(
          new EntryRef(old, report(made).own().seq()), Restore.origin(created).orElseThrow());
      lab.act(view -> List.of(weighing("F7", "0.2")));
      assertEquals(2, lab.register().history(new Subject("filter", "F7")).size());
    }
    assertEquals(List.of(), labs.notes);
    assertTrue(VerifyLab.of(folder.resolve("new"), List.of()).ok());
  }

  private static VerifyLab.Report report(Backup.Made made) {
    return VerifyLab.of(made.folder(), List.of());
  }

  @Test
  void nothingIsRestoredIntoALabOrFromNoBackup() throws Exception {
    try (OpenLab lab = new Labs(1).create(folder.resolve("lab"))) {
      Backup.Made made = Backup.of(lab, Files.createDirectory(folder.resolve("stick")));
      assertThrows(
          Problem.Refused.class,
          () -> Restore.from(made.folder(), folder.resolve("lab"), "x", new Labs(2).setting()));
    }
    assertThrows(
        Problem.WrongUse.class,
        () -> Restore.from(folder, folder.resolve("x"), "x", new Labs(2).setting()));
  }

  @Test
  void aStickThatCannotBeWrittenIsToldAndHarmsNothing() throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "");
    try (OpenLab lab = new Labs(1).create(folder.resolve("lab"))) {
      Problem problem = assertThrows(Problem.Outside.class, () -> Backup.of(lab, file));
      assertTrue(problem.what().contains("not finished"));
      lab.act(view -> List.of(weighing("F", "0.1")));
    }
  }
}
