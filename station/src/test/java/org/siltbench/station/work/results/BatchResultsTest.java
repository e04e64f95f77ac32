package org.siltbench.station.work.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.calc.flag.Flag;
import org.siltbench.labels.log.LogSheet;
import org.siltbench.station.Problem;
import org.siltbench.station.json.Json;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.TestLab;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.check.CheckOverride;
import org.siltbench.station.work.correct.Correction;
import org.siltbench.station.work.correct.Hold;
import org.siltbench.station.work.correct.Rejection;
import org.siltbench.station.work.correct.Swap;
import org.siltbench.station.work.log.LogSheets;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.release.Release;
import org.siltbench.station.work.results.BatchResults.FilterResult;

class BatchResultsTest {

  @TempDir Path folder;
  private TestLab lab;
  private MethodBook methods;
  private List<String> ids;
  private String batch;
  private final List<Entry> pre = new ArrayList<>();
  private final List<Entry> post = new ArrayList<>();
  private final List<Entry> notes = new ArrayList<>();

  @BeforeEach
  void open() {
    lab = new TestLab(folder.resolve("lab"), 5);
    methods = MethodBook.of(folder);
    ids = lab.batch("sm-2540d-22", "sample", "sample", "sample", "method-blank", "spare");
    batch = lab.state(ids.get(0)).batch();
    check(true);
    for (String id : ids) {
      pre.add(weigh(id, "pre", "0.11234", ""));
    }
    receive(0, "S1", "500");
    receive(1, "S2", "250");
    receive(2, "S2", "250");
    weighed("D1", "0.12900", "0.13000", "0.12000", "0.11232");
    weighed("D2", "0.12891", "0.12990", "0.11990", "0.11230");
  }

  @AfterEach
  void close() {
    lab.close();
  }

  private void check(boolean pass) {
    lab.write(
        "check.weighed",
        "balance",
        "B1",
        "weight",
        "100mg",
        "phase",
        "opening",
        "pass",
        pass,
        "error_mg",
        "0.01",
        "limit_mg",
        "0.3",
        "certified_g",
        "0.1",
        "reading_g",
        "0.10001");
  }

  private Entry weigh(String id, String status, String grams, String cycle) {
    return lab.write(
        "weighing",
        "filter",
        id,
        "status",
        status,
        "round",
        1L,
        "mass_g",
        grams,
        "resolution_g",
        "0.00001",
        "u_g",
        "0.000003",
        "balance",
        "B1",
        "cycle",
        cycle,
        "purpose",
        "result",
        "keyed",
        false,
        "observed",
        true,
        "raw",
        List.of("0 " + grams + " g"),
        "rule",
        org.siltbench.station.life.VerdictRule.data(methods.get("sm-2540d-22").constancy()));
  }

  private void receive(int i, String sample, String volume) {
    notes.add(
        lab.write(
            "sample.received",
            "filter",
            ids.get(i),
            "sample",
            sample,
            "role",
            "sample",
            "filter_order",
            "1",
            "site",
            "upper",
            "collected",
            "2026-05-12T10:1" + i + "Z",
            "volume_ml",
            volume,
            "taken",
            "aliquot"));
  }

  private void weighed(String cycle, String... grams) {
    List<Map<String, String>> dishes = new ArrayList<>();
    for (int i = 0; i < grams.length; i++) {
      dishes.add(Map.of("filter", ids.get(i), "dish", Integer.toString(i)));
    }
    lab.write("dry.started", "cycle", cycle, "filters", dishes, "purpose", "post", "in", time(-90));
    lab.write(
        "dry.ended",
        "cycle",
        cycle,
        "filters",
        ids.subList(0, grams.length),
        "out",
        time(-30),
        "cooled_until",
        time(-1),
        "useful_until",
        time(120));
    for (int i = 0; i < grams.length; i++) {
      post.add(weigh(ids.get(i), "post", grams[i], cycle));
    }
  }

  private String time(int minutes) {
    return Facts.time(OffsetDateTime.now(lab.clock()).plusMinutes(minutes));
  }

  private BatchResults results() {
    return BatchResults.of(lab.bench(), methods, Batches.require(lab.bench().register(), batch));
  }

  private FilterResult row(int i) {
    return results().rows().stream()
        .filter(row -> row.state().id().equals(ids.get(i)))
        .findFirst()
        .orElseThrow();
  }

  private double concentration(int i) {
    return assertNotNullAnd(row(i)).mgPerL();
  }

  private static org.siltbench.calc.result.Concentration assertNotNullAnd(FilterResult row) {
    assertNotNull(row.result().concentration());
    return row.result().concentration();
  }

  @Test
  void results_follow_from_masses_and_volumes_and_pending_filters_say_why() {
    // (0.12891 g - 0.11234 g) / 0.500 L = 33.14 mg/L
    assertEquals(33.14, concentration(0), 1e-9);
    assertEquals("yes", row(0).result().constantWord());
    assertEquals("pre-weighed", results().pending().get(ids.get(4)));
    assertEquals(-0.04, row(3).result().residue().milligrams(), 1e-12);
  }

  @Test
  void a_sample_over_two_filters_adds_masses_and_volumes() {
    // (17.56 mg + 7.56 mg) / 0.500 L = 50.24 mg/L
    assertEquals(50.24, concentration(1), 1e-9);
    assertEquals(50.24, concentration(2), 1e-9);
    assertTrue(row(1).result().flags().contains(Flag.SEVERAL_FILTERS));
  }

  @Test
  void every_mass_of_a_result_leads_to_its_ledger_entry_and_raw_lines() {
    for (FilterResult row : results().rows()) {
      row.state()
          .weighings()
          .forEach(
              weighed -> {
                Entry entry = lab.bench().register().entry(weighed.ref()).orElseThrow();
                assertEquals(weighed.digits(), entry.data().get("mass_g"));
                assertFalse(((List<?>) entry.data().get("raw")).isEmpty());
              });
    }
  }

  @Test
  void a_failed_check_after_the_weighings_speaks_against_them() {
    assertFalse(row(0).result().flags().contains(Flag.CHECK_FAILED));
    check(false);
    assertTrue(row(0).result().flags().contains(Flag.CHECK_FAILED));
    Problem.Refused no =
        assertThrows(Problem.Refused.class, () -> release("").record(lab.bench(), methods));
    assertTrue(no.what().contains("check"), no.what());
  }

  @Test
  void a_mass_weighed_in_spite_of_a_failed_check_carries_it_into_result_release_log_and_report() {
    check(false);
    assertEquals(Set.of(), overridden());
    Entry said = new CheckOverride("B1", "the weight was dropped").record(lab.bench());
    assertEquals(Set.of(), overridden(), "what was weighed before is not what was meant");
    lab.clock().advance(Duration.ofMinutes(1));
    weighed("D3", "0.12890");
    check(true);
    weighed("D4", "0.12891", "0.12991");
    assertEquals(Set.of(ids.get(0)), overridden());
    assertTrue(row(0).result().flags().contains(Flag.CHECK_FAILED), "it is no pass");
    Problem.Refused no =
        assertThrows(Problem.Refused.class, () -> release("").record(lab.bench(), methods));
    assertTrue(no.what().contains("supervisor's word"), no.what());
    var sheet = logSheet();
    assertEquals("the weight was dropped", sheet.overrides().get(0).reason());
    assertTrue(
        sheet.lines().stream().anyMatch(line -> line.check().matches("FAILED .*, overridden .*")));
    String statements = ResultSheet.of(lab.bench(), results()).report().statements().toString();
    assertTrue(statements.contains("the weight was dropped"), statements);
    assertTrue(statements.contains(said.ref().toString()), statements);
    CheckCover cover = new CheckCover(lab.bench().register(), lab.clock().getZone());
    List<List<String>> traced =
        new Trace(lab.bench().register(), cover, results()).weighings().rows();
    assertEquals(1, traced.stream().filter(r -> r.contains(said.ref().toString())).count());
    release("seen by us all").record(lab.bench(), methods);
  }

  private Set<String> overridden() {
    Set<String> out = new java.util.TreeSet<>();
    for (FilterResult row : results().rows()) {
      if (row.result().flags().contains(Flag.CHECK_OVERRIDDEN)) {
        out.add(row.state().id());
      }
    }
    return out;
  }

  @Test
  void a_correction_lists_the_results_that_change_and_only_those() {
    Impact impact = new Impact(lab.bench(), methods);
    Correction correction =
        new Correction(notes.get(0).ref(), Map.of("volume_ml", "400"), "second reading");
    Impact.Outcome outcome =
        impact.around(
            impact.about(notes.get(0).ref()), () -> List.of(correction.record(lab.bench())));
    assertEquals(1, outcome.changes().size());
    assertEquals(ids.get(0), outcome.changes().get(0).filter());
    assertEquals(41.425, concentration(0), 1e-9);
    assertTrue(row(0).result().flags().contains(Flag.CORRECTED));
  }

  private void wrong(EntryRef ref, String field, String value) {
    Correction correction = new Correction(ref, Map.of(field, value), "a reason");
    Problem no = assertThrows(Problem.class, () -> correction.record(lab.bench()));
    assertFalse(no.what().isEmpty());
  }

  @Test
  void a_correction_is_checked_like_a_first_record() {
    wrong(post.get(0).ref(), "mass_g", "abc");
    wrong(post.get(0).ref(), "mass_g", "0.12900");
    wrong(post.get(0).ref(), "filter", "nonsense");
    wrong(post.get(0).ref(), "raw", "x");
    wrong(notes.get(0).ref(), "volume_ml", "0");
    wrong(notes.get(0).ref(), "volume_ml", "500 L");
    wrong(notes.get(0).ref(), "portions_ml", "250+250");
    wrong(notes.get(0).ref(), "left_ml", "20");
    wrong(notes.get(0).ref(), "collected", "2031-01-01T00:00");
    wrong(notes.get(0).ref(), "role", "dog");
    wrong(new EntryRef(lab.bench().code(), 9999), "mass_g", "0.1");
    wrong(new EntryRef(lab.bench().code(), 1), "name", "other");
    assertThrows(
        Problem.WrongUse.class,
        () -> new Correction(post.get(0).ref(), Map.of("mass_g", "0.1"), " "));
  }

  @Test
  void portions_take_the_place_of_a_volume_in_one_correction() {
    Map<String, String> set = new LinkedHashMap<>();
    set.put("volume_ml", "");
    set.put("portions_ml", "250+200");
    set.put("left_ml", "50");
    new Correction(notes.get(0).ref(), set, "found the tally").record(lab.bench());
    assertEquals(16.57 / 0.4, concentration(0), 1e-9);
  }

  @Test
  void a_swap_exchanges_the_weighings_of_two_bags_and_swapping_back_undoes_it() {
    new Swap(ids.get(0), ids.get(1), Swap.What.POST, "bags mixed up").record(lab.bench());
    assertEquals("0.12990", lab.state(ids.get(0)).postMass().orElseThrow().digits());
    assertEquals("0.12891", lab.state(ids.get(1)).postMass().orElseThrow().digits());
    new Swap(ids.get(0), ids.get(1), Swap.What.POST, "they were not").record(lab.bench());
    assertEquals(33.14, concentration(0), 1e-9);
  }

  @Test
  void a_swap_of_notes_moves_sample_and_volume() {
    new Swap(ids.get(0), ids.get(1), Swap.What.NOTES, "lines mixed up").record(lab.bench());
    assertEquals("S2", row(0).note("sample"));
    assertEquals("S1", row(1).note("sample"));
  }

  private Release release(String accept) {
    return new Release(batch, "", false, accept);
  }

  @Test
  void a_release_freezes_figures_and_changes_only_by_an_amended_report() {
    Entry first = release("").record(lab.bench(), methods);
    assertEquals(batch + "-R1", first.data().get("report"));
    assertEquals(Status.REPORTED, lab.state(ids.get(0)).status());
    assertThrows(Problem.Refused.class, () -> release("").record(lab.bench(), methods));
    new Correction(notes.get(0).ref(), Map.of("volume_ml", "400"), "second reading")
        .record(lab.bench());
    Entry second = release("").record(lab.bench(), methods);
    assertEquals(batch + "-R1", second.data().get("replaces"));
    assertEquals(batch + "-R2", lab.state(ids.get(0)).report());
  }

  @Test
  void a_held_result_is_not_released_until_the_hold_is_lifted() {
    new Hold(List.of(ids.get(0)), false, "mould").record(lab.bench());
    assertThrows(Problem.Refused.class, () -> release("").record(lab.bench(), methods));
    new Hold(List.of(ids.get(0)), true, "looked at").record(lab.bench());
    assertNotNull(release("").record(lab.bench(), methods));
  }

  @Test
  void a_result_that_is_not_constant_needs_a_reason_to_be_released() {
    weighed("D3", "0.12500");
    Problem.Refused no =
        assertThrows(Problem.Refused.class, () -> release("").record(lab.bench(), methods));
    assertTrue(no.what().contains(ids.get(0)), no.what());
    assertEquals(
        "the storm could not wait",
        release("the storm could not wait").record(lab.bench(), methods).data().get("accepted"));
  }

  @Test
  void a_rejected_filter_gives_no_result_and_is_rejected_once() {
    new Rejection(ids.get(0), "torn").record(lab.bench());
    assertEquals("rejected: torn", results().pending().get(ids.get(0)));
    Rejection again = new Rejection(ids.get(0), "torn");
    assertThrows(Problem.Refused.class, () -> again.record(lab.bench()));
  }

  private LogSheet logSheet() {
    return LogSheets.of(
        lab.bench().register(),
        Batches.require(lab.bench().register(), batch),
        methods.get("sm-2540d-22"));
  }

  @Test
  void the_log_shows_a_corrected_mass_struck_through_and_names_the_correction_once() {
    new Correction(pre.get(0).ref(), Map.of("mass_g", "0.11243"), "digits turned")
        .record(lab.bench());
    var sheet = logSheet();
    var line = sheet.lines().get(0);
    assertEquals("0.11243 g", line.reading().value());
    assertEquals(List.of("0.11234 g"), line.reading().struck());
    assertEquals(1, sheet.corrections().size());
    assertEquals("mass_g: 0.11234 -> 0.11243", sheet.corrections().get(0).what());
    assertEquals(13, sheet.lines().size());
    assertTrue(line.check().startsWith("passed"), line.check());
  }

  @Test
  void the_folder_describes_itself_and_its_checksums_hold() throws Exception {
    lab.write(
        "corrected",
        "entry",
        Map.of("bench", notes.get(0).ref().bench(), "seq", notes.get(0).ref().seq()),
        "set",
        Map.of("site", "=HYPERLINK(\"x\")"),
        "reason",
        "hostile");
    Path out = folder.resolve("out");
    List<Path> files = ResultFiles.write(lab.bench(), results(), out, "the client");
    for (Path file : files) {
      assertTrue(Files.size(file) > 0, file.toString());
    }
    Map<String, Object> described =
        Json.object(Files.readAllBytes(out.resolve("datapackage.json")));
    for (Object item : (List<?>) described.get("resources")) {
      Map<?, ?> resource = (Map<?, ?>) item;
      byte[] bytes = Files.readAllBytes(out.resolve(resource.get("path").toString()));
      assertEquals("sha256:" + DataPackage.sha256(bytes), resource.get("hash"));
      assertEquals((long) bytes.length, resource.get("bytes"));
      String header = new String(bytes, java.nio.charset.StandardCharsets.UTF_8).split("\r\n")[0];
      List<?> fields = (List<?>) ((Map<?, ?>) resource.get("schema")).get("fields");
      assertEquals(header.split(",").length, fields.size());
    }
    String table = Files.readString(out.resolve("results.csv"));
    assertTrue(table.contains("'=HYPERLINK"), table);
    assertTrue(Files.readString(out.resolve("concentration.svg")).startsWith("<?xml"));
    assertEquals(
        Set.of("png", "svg", "pdf", "csv", "json", "txt", "xlsx"),
        Set.copyOf(
            files.stream().map(f -> f.toString().replaceFirst(".*\\.", "")).distinct().toList()));
  }

  @Test
  void writing_the_files_can_be_watched_and_stopped_between_two_steps() {
    Path out = folder.resolve("stopped");
    List<String> steps = new ArrayList<>();
    Problem.Refused stopped =
        assertThrows(
            Problem.Refused.class,
            () ->
                ResultFiles.write(
                    lab.bench(),
                    results(),
                    out,
                    "",
                    false,
                    (what, done, of) -> steps.add(what) && done < 1));
    assertEquals(List.of("tables", "report"), steps);
    assertTrue(stopped.safe().contains("files are written"), stopped.safe());
    assertTrue(Files.exists(out.resolve("results.csv")));
    assertFalse(Files.exists(out.resolve("report.pdf")));
  }

  @Test
  void a_weighing_before_it_had_cooled_is_flagged() {
    lab.clock().advance(Duration.ofMinutes(5));
    lab.write(
        "dry.started",
        "cycle",
        "D9",
        "filters",
        List.of(Map.of("filter", ids.get(0), "dish", "1")),
        "purpose",
        "post",
        "in",
        time(-60));
    lab.write(
        "dry.ended",
        "cycle",
        "D9",
        "filters",
        List.of(ids.get(0)),
        "out",
        time(-1),
        "cooled_until",
        time(29),
        "useful_until",
        time(200),
        "in_range",
        false);
    weigh(ids.get(0), "post", "0.12890", "D9");
    assertTrue(row(0).result().flags().containsAll(Set.of(Flag.WEIGHED_WARM, Flag.OVEN_OUT)));
  }
}
