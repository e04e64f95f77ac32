package org.siltbench.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.register.Subject;

class LabFolderTest {

  @TempDir Path folder;
  private final List<String> notes = new ArrayList<>();

  private Setting setting() {
    return new Setting(
        "AB",
        Clock.fixed(Instant.parse("2026-03-02T08:00:00Z"), ZoneOffset.ofHours(1)),
        new Random(7),
        new PlainSubjects(),
        note -> notes.add(note.english()));
  }

  private static Draft weighing(String filter, String mass) {
    return new Draft("weighing", 1, true, Map.of("filter", filter, "mass_g", mass));
  }

  @Test
  void whatWasWrittenIsThereWhenTheLabIsOpenedAgain() {
    String code;
    try (Bench bench = LabFolder.create(folder, "North", true, setting())) {
      code = bench.code();
      assertTrue(bench.practice());
      List<Entry> written = bench.act(view -> List.of(weighing("F1", "0.1234")));
      assertEquals(2, written.get(0).ref().seq());
      assertEquals(written, bench.register().history(new Subject("filter", "F1")));
    }
    try (Bench bench = LabFolder.open(folder, setting())) {
      assertEquals(code, bench.code());
      assertTrue(bench.practice());
      bench.act(view -> List.of(weighing("F1", "0.1235")));
      assertEquals(
          "{\"mass_g\":\"0.1235\",\"seen\":[\"%s/2\",\"%s/3\"]}".formatted(code, code),
          bench.register().state(new Subject("filter", "F1")).orElseThrow().summary());
    }
    assertEquals(List.of(), notes);
  }

  @Test
  void aCorrectionIsLaidOverTheLineAsWritten() {
    try (Bench bench = LabFolder.create(folder, "North", false, setting())) {
      Entry first = bench.act(view -> List.of(weighing("F1", "0.1"))).get(0);
      Entry correction =
          bench
              .act(
                  view ->
                      List.of(
                          new Draft(
                              "corrected",
                              1,
                              true,
                              Map.of(
                                  "entry",
                                  first.ref().toString(),
                                  "set",
                                  Map.of("filter", "F2"),
                                  "reason",
                                  "bags swapped"))))
              .get(0);
      assertEquals("F2", bench.register().entry(first.ref()).orElseThrow().data().get("filter"));
      assertEquals(
          "F1", bench.register().asWritten(first.ref()).orElseThrow().data().get("filter"));
      assertEquals(List.of(correction), bench.register().amendmentsOf(first.ref()));
      assertEquals(2, bench.register().history(new Subject("filter", "F2")).size());
      assertEquals(
          List.of(correction),
          bench.register().history(new Subject("filter", "F1")),
          "the filter it was taken from shows the correction");
    }
  }

  @Test
  void twoOpenedOnOneFolderSeeEachOther() {
    try (Bench one = LabFolder.create(folder, "North", false, setting());
        Bench two = LabFolder.open(folder, setting())) {
      one.act(view -> List.of(weighing("F1", "0.1")));
      two.act(
          view -> {
            assertEquals(1, view.history(new Subject("filter", "F1")).size());
            return List.of(weighing("F1", "0.2"));
          });
      one.act(view -> List.of());
      assertEquals(2, one.register().history(new Subject("filter", "F1")).size());
    }
  }

  @Test
  void aRefusedActWritesNothing() {
    try (Bench bench = LabFolder.create(folder, "North", false, setting())) {
      assertThrows(
          Problem.Refused.class,
          () ->
              bench.act(
                  view -> {
                    throw new Problem.Refused("wrong bag", "", "");
                  }));
      List<Entry> all = new ArrayList<>();
      bench.register().each(all::add);
      assertEquals(1, all.size());
    }
  }

  @Test
  void aDeletedOrDamagedRegisterIsMadeAnew() throws Exception {
    try (Bench bench = LabFolder.create(folder, "North", false, setting())) {
      bench.act(view -> List.of(weighing("F1", "0.1")));
    }
    Path register = folder.resolve("register").resolve("register.mv.db");
    assertTrue(Files.exists(register));
    Files.write(register, new byte[10_000]);
    try (Bench bench = LabFolder.open(folder, setting())) {
      assertEquals(1, bench.register().history(new Subject("filter", "F1")).size());
    }
    Files.delete(register);
    try (Bench bench = LabFolder.open(folder, setting())) {
      assertEquals(1, bench.register().history(new Subject("filter", "F1")).size());
    }
  }

  @Test
  void anInterruptedCallerHarmsNothing() {
    try (Bench bench = LabFolder.create(folder, "North", false, setting())) {
      Thread.currentThread().interrupt();
      bench.act(view -> List.of(weighing("F1", "0.1")));
      assertEquals(1, bench.register().history(new Subject("filter", "F1")).size());
      assertTrue(Thread.interrupted());
    }
    assertFalse(notes.toString().contains("damaged"));
  }
}
