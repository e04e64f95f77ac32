package org.siltbench.station.work.amend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.TestLab;
import org.siltbench.station.work.correct.Correction;
import org.siltbench.station.work.correct.Rejection;
import org.siltbench.station.work.correct.Swap;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.results.Impact;

/** What an act would change is what it then changes; looking writes nothing. */
class AmendTest {

  @TempDir Path folder;
  private TestLab lab;
  private MethodBook methods;
  private List<String> ids;
  private Entry weighed;

  @BeforeEach
  void open() {
    lab = new TestLab(folder.resolve("lab"), 5);
    methods = MethodBook.of(folder);
    ids = lab.batch("sm-2540d-22", "sample", "sample", "sample");
    ids.forEach(id -> lab.pre(id, "0.11234"));
    for (String id : ids.subList(0, 2)) {
      lab.write(
          "sample.received",
          "filter",
          id,
          "sample",
          "S" + id,
          "role",
          "sample",
          "volume_ml",
          "250");
      lab.write(
          "dry.started",
          "cycle",
          "C" + id,
          "purpose",
          "post",
          "filters",
          List.of(Map.of("filter", id, "dish", "1")));
      lab.write("dry.ended", "cycle", "C" + id, "filters", List.of(id));
      weighed =
          lab.write(
              "weighing",
              "filter",
              id,
              "status",
              "post",
              "round",
              1L,
              "cycle",
              "C" + id,
              "mass_g",
              id.equals(ids.get(0)) ? "0.14334" : "0.12234",
              "verdict",
              "constant");
    }
  }

  @AfterEach
  void close() {
    lab.close();
  }

  private long size() throws Exception {
    return Files.size(
        folder.resolve("lab").resolve("ledger").resolve(lab.bench().code() + ".jsonl"));
  }

  private void sameAheadAsAfter(Amend amend, int changes) throws Exception {
    long before = size();
    List<Impact.Change> ahead = amend.ahead(lab.bench(), methods);
    assertEquals(before, size());
    assertEquals(ahead, amend.ahead(lab.bench(), methods));
    assertEquals(changes, ahead.size(), ahead.toString());
    assertEquals(ahead, amend.record(lab.bench(), methods).changes());
    assertTrue(size() > before);
    assertEquals(
        List.of(), new Impact(lab.bench(), methods).around(new HashSet<>(ids), List::of).changes());
  }

  @Test
  void a_corrected_mass() throws Exception {
    sameAheadAsAfter(
        Amend.of(new Correction(weighed.ref(), Map.of("mass_g", "0.12345"), "misread"), methods),
        1);
  }

  @Test
  void an_entry_that_moves_to_another_filter() throws Exception {
    Entry notes =
        lab.bench().register().history(About.filter(ids.get(0))).stream()
            .filter(entry -> entry.kind().equals("sample.received"))
            .findFirst()
            .orElseThrow();
    sameAheadAsAfter(
        Amend.of(new Correction(notes.ref(), Map.of("filter", ids.get(2)), "wrong bag"), methods),
        1);
  }

  @Test
  void an_entry_taken_back_and_corrected_again() throws Exception {
    sameAheadAsAfter(
        Amend.of(new Correction(weighed.ref(), Map.of("void", "true"), "door open"), methods), 1);
    sameAheadAsAfter(
        Amend.of(new Correction(weighed.ref(), Map.of("void", "false"), "it was not"), methods), 1);
  }

  @Test
  void two_filters_swapped_back_and_forth() throws Exception {
    Swap swap = new Swap(ids.get(0), ids.get(1), Swap.What.POST, "exchanged");
    sameAheadAsAfter(Amend.of(swap), 2);
    sameAheadAsAfter(Amend.of(swap), 2);
  }

  @Test
  void a_rejected_filter_and_one_that_the_rules_refuse() throws Exception {
    Rejection rejection = new Rejection(ids.get(0), "torn");
    sameAheadAsAfter(Amend.of(rejection), 1);
    assertThrows(Problem.Refused.class, () -> Amend.of(rejection).ahead(lab.bench(), methods));
  }
}
