package org.siltbench.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.siltbench.station.bench.Labs.weighing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.Position;

class VerifyLabTest {

  @TempDir Path folder;
  private final Labs labs = new Labs(5);
  private Path ledger;
  private String code;
  private Position atNoon;

  @BeforeEach
  void aDayAtTheBench() {
    try (OpenLab lab = labs.create(folder)) {
      code = lab.code();
      ledger = folder.resolve("ledger").resolve(code + ".jsonl");
      lab.act(view -> List.of(weighing("F1", "0.1"), weighing("F2", "0.2")));
      atNoon = lab.ledgers().get(code);
      lab.act(view -> List.of(weighing("F3", "0.3")));
    }
  }

  private VerifyLab.Report verify(Anchor... anchors) {
    return VerifyLab.of(folder, List.of(anchors));
  }

  private void cutOff(int lines) throws IOException {
    List<String> all = Files.readAllLines(ledger);
    Files.write(ledger, all.subList(0, all.size() - lines));
  }

  @Test
  void aSoundLabIsOkAndSaysThatNothingWasComparedOutside() {
    VerifyLab.Report report = verify();
    assertTrue(report.ok(), report.problems().toString());
    assertEquals(4, report.own().entries());
    assertEquals(List.of(), report.anchors());
  }

  @Test
  void linesCutOffShowAgainstAPrintedHashOnly() throws IOException {
    cutOff(2);
    assertTrue(verify().ok(), "no anchor, nothing to see");
    String printed = atNoon.sum().substring(0, 16).toUpperCase();
    VerifyLab.Report report = verify(VerifyLab.paper(code, printed));
    assertFalse(report.ok());
    assertTrue(report.problems().get(0).what().contains("paper"));
  }

  @Test
  void aPrintedHashThatIsThereHolds() {
    VerifyLab.Report report = verify(VerifyLab.paper(code, atNoon.sum().substring(0, 12)));
    assertTrue(report.ok());
    assertTrue(report.anchors().get(0).holds());
    assertThrows(Problem.WrongUse.class, () -> VerifyLab.paper(code, "coffee stain"));
  }

  @Test
  void linesCutOffShowAgainstABackupAndARememberedAnchor() throws IOException {
    Path copy = folder.resolve("copy");
    Files.createDirectories(copy.resolve("ledger"));
    Files.copy(ledger, copy.resolve("ledger").resolve(ledger.getFileName()));
    Files.copy(folder.resolve("lab.json"), copy.resolve("lab.json"));
    try (OpenLab lab = labs.open(folder)) {
      lab.anchor("server", "lab server", code, atNoon.seq(), atNoon.sum());
    }
    assertTrue(verify(VerifyLab.backup(copy).toArray(new Anchor[0])).ok());
    cutOff(2);
    VerifyLab.Report report = verify(VerifyLab.backup(copy).toArray(new Anchor[0]));
    assertEquals(2, report.problems().size(), report.problems().toString());
  }

  @Test
  void theEndOfADayIsSignedAndAFalseSignatureIsFound() throws IOException {
    Entry closed;
    try (OpenLab lab = labs.open(folder)) {
      closed = lab.closeDay();
      lab.act(view -> List.of(weighing("F4", "0.4")));
    }
    assertTrue(verify().ok(), verify().problems().toString());
    String signature = (String) closed.data().get("signature");
    assertEquals(128, signature.length());
    String text = Files.readString(ledger);
    Files.writeString(ledger, text.replace(signature, signature.replace('1', '2')));
    assertFalse(verify().ok());
  }

  @Test
  void aLedgerShorterThanTheRegisterKnewStopsWritingAndIsReadable() throws IOException {
    cutOff(1);
    try (OpenLab lab = labs.open(folder)) {
      Problem problem =
          assertThrows(
              Problem.Outside.class, () -> lab.act(view -> List.of(weighing("F5", "0.5"))));
      assertTrue(problem.what().contains("missing at the end"), problem.what());
      List<Entry> all = new ArrayList<>();
      lab.register().each(all::add);
      assertEquals(3, all.size());
    }
    try (OpenLab lab = labs.open(folder)) {
      assertThrows(Problem.Outside.class, () -> lab.act(view -> List.of(weighing("F5", "0.5"))));
    }
  }

  @Test
  void aDamagedLineStopsWritingAndTheRestStaysReadable() throws IOException {
    byte[] bytes = Files.readAllBytes(ledger);
    bytes[bytes.length - 200] ^= 1;
    Files.write(ledger, bytes);
    try (OpenLab lab = labs.open(folder)) {
      assertThrows(Problem.Outside.class, () -> lab.act(view -> List.of(weighing("F5", "0.5"))));
      assertEquals(
          1,
          lab.register().list("filter", "", "").stream()
              .filter(r -> r.subject().id().equals("F1"))
              .count());
    }
    VerifyLab.Report report = verify();
    assertEquals(4, report.problems().get(0).line());
    assertEquals(4, report.problems().get(0).seq());
  }

  @Test
  void aTornLastLineIsSetAsideAndWorkGoesOn() throws IOException {
    byte[] bytes = Files.readAllBytes(ledger);
    Files.write(ledger, java.util.Arrays.copyOf(bytes, bytes.length - 40));
    Files.delete(folder.resolve("register").resolve("register.mv.db"));
    try (OpenLab lab = labs.open(folder)) {
      assertEquals(4, lab.act(view -> List.of(weighing("F5", "0.5"))).get(0).ref().seq());
    }
    assertTrue(labs.notes.toString().contains("cut short"), labs.notes.toString());
    VerifyLab.Report report = verify();
    assertTrue(report.ok());
    assertEquals(1, report.setAside().size());
  }

  @Test
  void aWholeLastLineWithoutItsNewlineIsKept() throws IOException {
    byte[] bytes = Files.readAllBytes(ledger);
    Files.write(ledger, java.util.Arrays.copyOf(bytes, bytes.length - 1));
    Files.delete(folder.resolve("register").resolve("register.mv.db"));
    assertTrue(verify().ok());
    try (OpenLab lab = labs.open(folder)) {
      assertEquals(5, lab.act(view -> List.of(weighing("F5", "0.5"))).get(0).ref().seq());
    }
    assertEquals(5, verify().own().entries());
    assertEquals(List.of(), labs.notes);
  }

  @Test
  void anUnknownKindThatMustBeUnderstoodStopsWritingButNotReading() throws IOException {
    String last = Files.readAllLines(ledger).get(3);
    Entry unknown =
        new Entry(
            1,
            new org.siltbench.station.ledger.EntryRef(code, 5),
            java.time.OffsetDateTime.parse("2026-03-02T10:00:00+01:00"),
            new org.siltbench.station.ledger.Hlc(1_900_000_000_000L, 0),
            "AB",
            "future.kind",
            3,
            true,
            java.util.Map.of());
    byte[] line =
        org.siltbench.station.ledger.LineText.write(
            unknown, last.substring(last.length() - 66, last.length() - 2));
    Files.write(ledger, line, java.nio.file.StandardOpenOption.APPEND);
    Files.writeString(ledger, "\n", java.nio.file.StandardOpenOption.APPEND);
    for (int time = 0; time < 2; time++) {
      try (OpenLab lab = labs.open(folder)) {
        Problem problem =
            assertThrows(
                Problem.Outside.class, () -> lab.act(view -> List.of(weighing("F5", "0.5"))));
        assertTrue(problem.what().contains("future.kind"), problem.what());
        assertEquals(5, lab.rebuild());
      }
    }
    assertTrue(verify().ok());
  }
}
