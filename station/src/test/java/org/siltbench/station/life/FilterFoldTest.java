package org.siltbench.station.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;

class FilterFoldTest {

  @TempDir Path folder;
  private TestLab lab;
  private List<String> ids;

  @BeforeEach
  void open() {
    lab = new TestLab(folder.resolve("lab"), 3);
    ids = lab.batch("sm-2540d-22", "sample", "sample", "control", "spare");
  }

  @AfterEach
  void close() {
    lab.close();
  }

  private String a() {
    return ids.get(0);
  }

  private void issueAndReceive(String id) {
    lab.write("batch.issued", "batch", lab.state(id).batch(), "trip", "T1", "filters", List.of(id));
    lab.write(
        "sample.received", "filter", id, "sample", "S1", "role", "sample", "volume_ml", "250");
  }

  private void dry(String id, String cycle) {
    lab.write(
        "dry.started",
        "cycle",
        cycle,
        "filters",
        List.of(Map.of("filter", id, "dish", "7")),
        "purpose",
        "post",
        "in",
        "2026-05-14T09:00Z");
    lab.write(
        "dry.ended",
        "cycle",
        cycle,
        "filters",
        List.of(id),
        "out",
        "2026-05-14T10:00Z",
        "cooled_until",
        "2026-05-14T10:30Z",
        "useful_until",
        "2026-05-14T11:30Z");
  }

  private Entry post(String id, String cycle, String grams, String verdict) {
    return lab.write(
        "weighing",
        "filter",
        id,
        "status",
        "post",
        "mass_g",
        grams,
        "cycle",
        cycle,
        "verdict",
        verdict);
  }

  @Test
  void a_whole_life_is_folded() {
    lab.pre(a(), "0.11234");
    lab.write("label.printed", "filter", a(), "revision", 1L, "mass_g", "0.11234");
    lab.write("bag.closed", "filter", a());
    issueAndReceive(a());
    dry(a(), "D1");
    post(a(), "D1", "0.12900", "not-tested");
    assertEquals(Status.POST_WEIGHED, lab.state(a()).status());
    dry(a(), "D2");
    post(a(), "D2", "0.12891", "constant");
    FilterState state = lab.state(a());
    assertEquals(Status.CONSTANT, state.status());
    assertEquals("0.11234", state.preMass().orElseThrow().digits());
    assertEquals("0.12891", state.postMass().orElseThrow().digits());
    assertEquals(2, state.post().size());
    assertEquals("7", state.lastStay().orElseThrow().dish());
    assertEquals(250, state.record().orElseThrow().volume().orElseThrow().millilitres());
    assertTrue(state.bagClosed());
    assertEquals(List.of(), state.oddities());
    lab.write("release", "batch", state.batch(), "report", "R1", "filters", List.of(a()));
    assertEquals("R1", lab.state(a()).report());
    assertEquals(Status.REPORTED, lab.state(a()).status());
  }

  @Test
  void a_correction_lays_itself_over_the_old_mass_and_the_line_stays() {
    Entry wrong = lab.pre(a(), "0.11234");
    lab.write(
        "corrected",
        "entry",
        Map.of("bench", wrong.ref().bench(), "seq", wrong.ref().seq()),
        "set",
        Map.of("mass_g", "0.11243"),
        "reason",
        "digits turned");
    assertEquals("0.11243", lab.state(a()).preMass().orElseThrow().digits());
    assertEquals(
        "0.11234",
        lab.bench().register().asWritten(wrong.ref()).orElseThrow().data().get("mass_g"));
  }

  @Test
  void a_voided_weighing_does_not_count() {
    Entry wrong = lab.pre(a(), "0.11234");
    lab.write(
        "corrected",
        "entry",
        Map.of("bench", wrong.ref().bench(), "seq", wrong.ref().seq()),
        "set",
        Map.of("void", true),
        "reason",
        "another filter lay on the pan");
    assertEquals(Status.PLANNED, lab.state(a()).status());
    assertTrue(lab.state(a()).preMass().isEmpty());
  }

  @Test
  void a_correction_of_the_filter_moves_the_mass_to_the_other_filter() {
    String b = ids.get(1);
    Entry wrong = lab.pre(a(), "0.11234");
    lab.write(
        "corrected",
        "entry",
        Map.of("bench", wrong.ref().bench(), "seq", wrong.ref().seq()),
        "set",
        Map.of("filter", b),
        "reason",
        "wrong bag scanned");
    assertEquals(Status.PLANNED, lab.state(a()).status());
    assertEquals("0.11234", lab.state(b).preMass().orElseThrow().digits());
  }

  @Test
  void a_swap_exchanges_the_entries_it_names() {
    String b = ids.get(1);
    Entry first = lab.pre(a(), "0.11111");
    Entry second = lab.pre(b, "0.12222");
    lab.write(
        "swapped",
        "filters",
        List.of(a(), b),
        "set",
        List.of(named(first.ref(), b), named(second.ref(), a())),
        "reason",
        "bags mixed up");
    assertEquals("0.12222", lab.state(a()).preMass().orElseThrow().digits());
    assertEquals("0.11111", lab.state(b).preMass().orElseThrow().digits());
  }

  private static Map<String, Object> named(EntryRef ref, String filter) {
    return Map.of("bench", ref.bench(), "seq", ref.seq(), "filter", filter);
  }

  @Test
  void a_spare_that_comes_back_with_notes_is_a_sample() {
    String spare = ids.get(3);
    lab.pre(spare, "0.11234");
    lab.write("sample.received", "filter", spare, "sample", "S9");
    assertEquals(Role.SAMPLE, lab.state(spare).role());
    assertEquals(Role.SPARE, lab.state(spare).plannedRole());
  }

  @Test
  void what_does_not_follow_is_kept_as_an_oddity() {
    lab.pre(a(), "0.11234");
    Entry early = post(a(), "D1", "0.12900", "not-tested");
    FilterState state = lab.state(a());
    assertEquals(Status.PRE_WEIGHED, state.status());
    assertEquals(1, state.post().size());
    assertEquals(early.ref(), state.oddities().get(0).ref());
  }

  @Test
  void a_hold_stays_until_it_is_lifted() {
    String batch = lab.state(a()).batch();
    lab.write("hold", "batch", batch, "filters", List.of(a()), "reason", "mould");
    assertEquals(List.of("mould"), lab.state(a()).holds());
    lab.write("hold", "batch", batch, "filters", List.of(a()), "lifted", true, "reason", "seen");
    assertEquals(List.of(), lab.state(a()).holds());
  }

  @Test
  void a_missing_bag_that_turns_up_is_no_longer_missing() {
    lab.pre(a(), "0.11234");
    lab.write(
        "batch.issued", "batch", lab.state(a()).batch(), "trip", "T1", "filters", List.of(a()));
    lab.write("bag.missing", "filter", a(), "trip", "T1");
    assertTrue(lab.state(a()).missing());
    lab.write("sample.received", "filter", a(), "sample", "S1");
    assertFalse(lab.state(a()).missing());
  }

  @Test
  void a_restarted_cycle_has_one_stay_with_the_later_start() {
    lab.pre(a(), "0.11234");
    issueAndReceive(a());
    for (String in : List.of("2026-05-14T09:00Z", "2026-05-14T09:20Z")) {
      lab.write(
          "dry.started",
          "cycle",
          "D1",
          "filters",
          List.of(Map.of("filter", a(), "dish", "7")),
          "purpose",
          "post",
          "in",
          in);
    }
    assertEquals(1, lab.state(a()).stays().size());
    assertEquals(20, lab.state(a()).lastStay().orElseThrow().in().getMinute());
  }

  @Test
  void the_lab_reopened_and_rebuilt_folds_the_same() {
    a_whole_life_is_folded();
    FilterState before = lab.state(a());
    lab.reopen();
    FilterState after = lab.state(a());
    assertEquals(before.status(), after.status());
    assertEquals(before.weighings(), after.weighings());
    assertEquals(before.stays(), after.stays());
  }

  @Test
  void rows_of_lists_carry_batch_status_and_summary() {
    lab.pre(a(), "0.11234");
    var row = lab.bench().register().state(About.filter(a())).orElseThrow();
    assertEquals(lab.state(a()).batch(), row.parent());
    assertEquals("pre-weighed", row.status());
    assertTrue(row.summary().contains("\"pre_g\":\"0.11234\""), row.summary());
    assertEquals(3, lab.bench().register().list("filter", row.parent(), "planned").size());
  }

  @Test
  void two_benches_that_weighed_one_bag_keep_both_weighings_and_show_it() {
    lab.pre(a(), "0.11234");
    issueAndReceive(a());
    dry(a(), "D1");
    Entry here = post(a(), "D1", "0.12900", "not-tested");
    List<Entry> history =
        new java.util.ArrayList<>(lab.bench().register().history(About.filter(a())));
    history.add(
        new Entry(
            here.v(),
            new EntryRef("ZZ99", 7),
            here.at(),
            new org.siltbench.station.ledger.Hlc(here.hlc().millis(), here.hlc().counter() + 1),
            "CD",
            here.kind(),
            here.kv(),
            here.must(),
            Map.of(
                "filter",
                a(),
                "status",
                "post",
                "mass_g",
                "0.12910",
                "cycle",
                "D1",
                "verdict",
                "not-tested")));
    FilterState state = FilterFold.fold(a(), history).orElseThrow();
    assertEquals(2, state.post().size());
    assertEquals(List.of("D1"), state.weighedTwice());
    assertEquals(1, state.oddities().size());
  }
}
