package org.siltbench.station.work.postweigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.stable.HandsFreePan;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.TestLab;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.check.CheckOverride;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.weigh.PanWatch;
import org.siltbench.station.work.weigh.Pans;
import org.siltbench.station.work.weigh.Patience;

@Timeout(60)
class PostWeighRunTest {

  @TempDir Path folder;
  private TestLab lab;
  private MethodBook methods;
  private List<String> ids;
  private final ScriptedPan pan = new ScriptedPan();
  private final Set<String> accepted = new HashSet<>();
  private boolean goOn;
  private boolean both;
  private final Map<String, String> dishes = new java.util.HashMap<>();
  private int cycles;

  @BeforeEach
  void open() {
    lab = new TestLab(folder.resolve("lab"), 5);
    methods = MethodBook.of(folder);
    ids = lab.batch("sm-2540d-22", "sample", "sample", "sample", "sample");
    for (String id : ids) {
      lab.pre(id, "0.11234");
      lab.write("sample.received", "filter", id, "sample", id, "volume_ml", "250");
    }
    check(true);
    dry(ids);
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
        "0",
        "limit_mg",
        "0.3");
  }

  /** Into the oven, out, and cooled: ready to be weighed for the next hours. */
  private void dry(List<String> filters) {
    String cycle = "D" + (++cycles);
    lab.write(
        "dry.started",
        "cycle",
        cycle,
        "filters",
        filters.stream()
            .map(id -> Map.of("filter", id, "dish", dishes.getOrDefault(id, "")))
            .toList(),
        "purpose",
        "post",
        "in",
        Facts.time(now()));
    lab.clock().advance(Duration.ofMinutes(61));
    lab.write(
        "dry.ended",
        "cycle",
        cycle,
        "filters",
        filters,
        "out",
        Facts.time(now()),
        "cooled_until",
        Facts.time(now().plusMinutes(30)),
        "useful_until",
        Facts.time(now().plusMinutes(150)));
    lab.clock().advance(Duration.ofMinutes(31));
  }

  private java.time.OffsetDateTime now() {
    return java.time.OffsetDateTime.now(lab.clock());
  }

  private PostWeighReport run(String... scans) throws InterruptedException {
    return run(Optional.of(Set.copyOf(ids)), scans);
  }

  private PostWeighReport run(Optional<Set<String>> expected, String... scans)
      throws InterruptedException {
    pan.clear();
    Deque<String> left = new ArrayDeque<>(List.of(scans));
    Ids feed =
        new Ids() {
          private boolean asked;

          @Override
          public void ask() {
            asked = true;
          }

          @Override
          public Answer poll() {
            if (!asked) {
              throw new AssertionError("a scan was read before it was asked for");
            }
            asked = false;
            return left.isEmpty() ? Answer.END : Answer.of(left.poll());
          }
        };
    PanWatch watch =
        new PanWatch(
            pan, new HandsFreePan(Pans.filters(methods.get("sm-2540d-22"))), Patience.USUAL, pan);
    PostWeighSettings settings =
        new PostWeighSettings(
            "B1", expected, goOn, false, both, accepted, "washed out leaf", null, null);
    PostWeighReport report =
        PostWeighRun.of(lab.bench(), methods, watch, feed, settings, pan).run();
    unread = left.size();
    return report;
  }

  private int unread;

  private FilterState state(int i) {
    return lab.state(ids.get(i));
  }

  @Test
  void masses_are_the_displayed_digits_and_two_dryings_make_a_verdict() throws Exception {
    pan.mass(ids.get(0), "0.12900").mass(ids.get(1), "0.13500");
    PostWeighReport first = run(ids.get(0), ids.get(1));
    assertEquals("0.12900", first.weighings().get(0).measured().grams());
    assertEquals(ConstantVerdict.Kind.NOT_TESTED, first.weighings().get(0).verdict().kind());
    assertEquals("", first.stopped());
    assertEquals(List.of(ids.get(2), ids.get(3)).stream().sorted().toList(), first.left());
    dry(ids.subList(0, 2));
    pan.mass(ids.get(0), "0.12891").mass(ids.get(1), "0.13400");
    PostWeighReport second = run(ids.get(0), ids.get(1));
    // SM 2540 D 3.c (to the 22nd ed., from memory): < 4 % or 0.5 mg, whichever is less
    assertEquals(ConstantVerdict.Kind.CONSTANT, second.weighings().get(0).verdict().kind());
    assertEquals(ConstantVerdict.Kind.DRY_AGAIN, second.weighings().get(1).verdict().kind());
    assertEquals("-0.00009", second.weighings().get(0).verdict().change().toGrams());
    assertEquals(Status.CONSTANT, state(0).status());
    assertEquals(Status.POST_WEIGHED, state(1).status());
  }

  @Test
  void a_correction_of_an_earlier_mass_turns_the_verdict() throws Exception {
    masses_are_the_displayed_digits_and_two_dryings_make_a_verdict();
    var wrong = state(0).post().get(0).ref();
    lab.write(
        "corrected",
        "entry",
        Map.of("bench", wrong.bench(), "seq", wrong.seq()),
        "set",
        Map.of("mass_g", "0.12990"),
        "reason",
        "misread");
    assertEquals("dry-again", state(0).postMass().orElseThrow().verdict());
    assertEquals(Status.POST_WEIGHED, state(0).status());
  }

  private void refused(PostWeighReport report, String... words) {
    assertEquals(1, report.refused().size(), report.toString());
    for (String word : words) {
      assertTrue(report.refused().get(0).why().contains(word), report.refused().get(0).why());
    }
    assertFalse(report.stopped().isEmpty());
  }

  @Test
  void a_wrong_bag_an_unknown_bag_and_a_second_scan_record_nothing_and_stop() throws Exception {
    refused(run(Optional.of(Set.of(ids.get(1))), ids.get(0), ids.get(1)), "Wrong bag", ids.get(0));
    assertEquals(1, unread, "what was scanned after the refusal stays unread");
    assertEquals(Status.DRYING, state(0).status());
    assertEquals(Status.DRYING, state(1).status());
    String foreign = new org.siltbench.calc.id.BatchCode("K3DF07").filters(1).get(0).text();
    refused(run(Optional.empty(), foreign), "No batch");
    refused(run("nonsense"), "no filter of this bench");
    pan.mass(ids.get(0), "0.12900");
    refused(run(ids.get(0), ids.get(0)), "weighed since it was last dried");
    assertEquals(1, state(0).post().size());
  }

  @Test
  void told_to_go_on_it_weighs_the_next_after_a_refusal() throws Exception {
    goOn = true;
    pan.mass(ids.get(0), "0.12900").mass(ids.get(1), "0.13500");
    PostWeighReport report = run("nonsense", ids.get(1));
    assertEquals(1, report.refused().size());
    assertEquals("0.13500", state(1).postMass().orElseThrow().digits());
    assertTrue(state(0).post().isEmpty());
  }

  @Test
  void warm_and_stale_filters_are_refused_with_the_time() throws Exception {
    dry(ids);
    lab.clock().advance(Duration.ofMinutes(-16));
    refused(run(ids.get(0)), "still cooling", "15 min");
    lab.clock().advance(Duration.ofHours(4));
    check(true);
    refused(run(ids.get(0)), "stale");
    assertTrue(state(0).post().isEmpty());
  }

  @Test
  void a_full_code_is_compared_with_the_ledger() throws Exception {
    FilterId id = new FilterId(ids.get(0));
    refused(run(new BagCode(id, "0.11243", 1).text()), "0.11243", "0.11234");
    pan.mass(ids.get(0), "0.12900");
    assertEquals(1, run(new BagCode(id, "0.11234", 1).text()).weighings().size());
  }

  @Test
  void an_older_label_is_accepted_with_an_explanation() throws Exception {
    FilterId id = new FilterId(ids.get(3));
    lab.write("weighing", "filter", ids.get(3), "status", "pre", "round", 2L, "mass_g", "0.11230");
    pan.mass(ids.get(3), "0.12900");
    PostWeighReport report = run(new BagCode(id, "0.11234", 1).text());
    assertEquals(1, report.weighings().size(), report.toString());
    assertTrue(pan.hints.get(0).contains("older label"), pan.hints.toString());
  }

  @Test
  void a_residue_far_below_zero_stops_and_asks_and_is_recorded_when_accepted() throws Exception {
    pan.mass(ids.get(0), "0.10900");
    refused(run(ids.get(0)), "less than before the field", "torn");
    accepted.add(ids.get(0));
    assertEquals(1, run(ids.get(0)).weighings().size());
  }

  @Test
  void a_slightly_negative_residue_is_normal() throws Exception {
    pan.mass(ids.get(0), "0.11230");
    assertEquals(1, run(ids.get(0)).weighings().size());
  }

  @Test
  void a_filter_that_takes_up_moisture_is_refused_and_nothing_is_recorded() throws Exception {
    pan.gaining(ids.get(0), "0.12900", 1.0);
    PostWeighReport report = run(ids.get(0));
    assertEquals(0, report.weighings().size(), report.toString());
    assertTrue(state(0).post().isEmpty());
  }

  @Test
  void after_the_methods_number_of_dryings_a_decision_is_asked_for() throws Exception {
    int most = methods.get("sm-2540d-22").constancy().maxCycles();
    for (int i = 0; i < most; i++) {
      if (i > 0) {
        dry(List.of(ids.get(0)));
        check(true);
      }
      pan.mass(ids.get(0), "0.1" + (29 + i) + "00");
      assertEquals(1, run(ids.get(0)).weighings().size());
    }
    assertTrue(pan.recorded.get(most - 1).decision());
    assertFalse(pan.recorded.get(0).decision());
  }

  @Test
  void a_missing_check_warns_or_stops_as_the_method_says() throws Exception {
    lab.clock().advance(Duration.ofMinutes(5));
    check(false);
    pan.mass(ids.get(0), "0.12900");
    PostWeighReport report = run(ids.get(0));
    boolean stops =
        methods.get("sm-2540d-22").balance().missingCheck()
            == org.siltbench.calc.method.BalanceRule.MissingCheck.STOP;
    assertEquals(stops, report.stopped().contains("failed"), report.toString());
    assertEquals(!stops, pan.warned.stream().anyMatch(w -> w.contains("failed")));
  }

  /** A lab's own method, as the preset but for a check that stops. */
  private String stopping() throws Exception {
    return own("stop", 20);
  }

  private String own(String missing, int every) throws Exception {
    String key = "own-" + missing;
    String text = methods.get("sm-2540d-22").text();
    String own =
        text.replace("sm-2540d-22", key)
            .replaceFirst("check_every = *20", "check_every = " + every)
            .replaceFirst("missing_check = *warn", "missing_check = " + missing);
    Files.createDirectories(folder.resolve("methods"));
    Files.writeString(folder.resolve("methods/" + key + ".method"), own);
    methods = MethodBook.of(folder);
    return key;
  }

  /** Four dried samples under a method with a check after every two weighings. */
  private void twoByTwo(String missing) throws Exception {
    close();
    lab = new TestLab(folder.resolve(missing), 6);
    ids = lab.batch(own(missing, 2), "sample", "sample", "sample", "sample");
    for (String id : ids) {
      lab.pre(id, "0.11234");
      lab.write("sample.received", "filter", id, "sample", id, "volume_ml", "250");
      pan.mass(id, "0.12900");
    }
    check(true);
    dry(ids);
  }

  @Test
  void a_run_started_again_asks_for_the_bracketing_check_before_the_first_scan() throws Exception {
    twoByTwo("stop");
    PostWeighReport first = run(ids.get(0), ids.get(1), ids.get(2));
    assertEquals(2, first.weighings().size());
    assertTrue(first.stopped().contains("2 weighings"), first.stopped());
    PostWeighReport again = run(ids.get(2), ids.get(3));
    assertEquals(0, again.weighings().size());
    assertTrue(again.stopped().contains("2 weighings"), again.stopped());
    assertEquals(2, unread, "no scan was taken");
    check(true);
    assertEquals(1, run(ids.get(2)).weighings().size());
    assertEquals(1, run(ids.get(3)).weighings().size(), "the second since the check");
  }

  @Test
  void a_load_that_is_refused_is_no_weighing_between_checks() throws Exception {
    twoByTwo("stop");
    goOn = true;
    PostWeighReport report = run("nonsense", ids.get(0), ids.get(0), ids.get(1));
    assertEquals(2, report.weighings().size());
    assertEquals(2, report.refused().size());
  }

  @Test
  void a_method_that_warns_says_it_once_for_so_many_weighings() throws Exception {
    twoByTwo("warn");
    assertEquals(3, run(ids.get(0), ids.get(1), ids.get(2)).weighings().size());
    assertEquals(1, bracketsWarned());
    assertEquals(1, run(ids.get(3)).weighings().size());
    assertEquals(2, bracketsWarned(), "a new run says it at its start, not at each mass");
  }

  private long bracketsWarned() {
    return pan.warned.stream().filter(w -> w.contains("bracketing check is due")).count();
  }

  @Test
  void a_supervisors_word_lets_the_weighing_go_on_and_each_run_says_so() throws Exception {
    close();
    lab = new TestLab(folder.resolve("strict"), 6);
    ids = lab.batch(stopping(), "sample", "sample");
    for (String id : ids) {
      lab.pre(id, "0.11234");
      lab.write("sample.received", "filter", id, "sample", id, "volume_ml", "250");
    }
    check(false);
    dry(ids);
    pan.mass(ids.get(0), "0.12900").mass(ids.get(1), "0.13000");
    PostWeighReport stopped = run(ids.get(0));
    assertTrue(stopped.weighings().isEmpty());
    assertTrue(stopped.stopped().contains("--override"), stopped.stopped());
    new CheckOverride("B1", "draught while the weight lay there").record(lab.bench());
    assertEquals("", run(ids.get(0)).stopped());
    assertTrue(
        pan.warned.stream()
            .anyMatch(w -> w.contains("AB has said") && w.contains("draught while the weight")),
        pan.warned.toString());
    assertEquals("0.12900", state(0).postMass().orElseThrow().digits());
    check(false);
    assertFalse(run(ids.get(1)).stopped().isEmpty(), "the next check has ended it");
    assertTrue(state(1).post().isEmpty());
  }

  private void redryInDishes() {
    for (int i = 0; i < 3; i++) {
      dishes.put(ids.get(i), i == 2 ? "A1" : Integer.toString(i + 1));
    }
    dry(ids);
  }

  @Test
  void a_dish_is_taken_and_its_bag_asked_for_once() throws Exception {
    redryInDishes();
    pan.mass(ids.get(1), "0.12900").mass(ids.get(2), "0.13000");
    PostWeighReport report = run("2", ids.get(1), "a1", ids.get(2));
    assertEquals(
        List.of(ids.get(1), ids.get(2)),
        report.weighings().stream().map(PostWeighReport.Done::filter).toList());
    assertEquals(List.of("bag " + ids.get(1) + " 2", "bag " + ids.get(2) + " a1"), pan.asked);
  }

  @Test
  void the_bag_of_another_dish_is_refused_and_nothing_goes_to_either() throws Exception {
    redryInDishes();
    refused(run("2", ids.get(0)), "In dish 2 lies " + ids.get(1), ids.get(0));
    assertEquals(Status.DRYING, state(0).status());
    assertEquals(Status.DRYING, state(1).status());
  }

  @Test
  void a_dish_without_its_bag_weighs_nothing() throws Exception {
    redryInDishes();
    refused(run("1"), "The bag of dish 1 was not scanned");
  }

  @Test
  void where_both_are_wanted_the_dish_of_each_bag_is_asked_for_and_compared() throws Exception {
    redryInDishes();
    both = true;
    pan.mass(ids.get(0), "0.12900").mass(ids.get(3), "0.13000");
    PostWeighReport right = run(ids.get(0), "1", ids.get(3));
    assertEquals(2, right.weighings().size(), "a filter without a dish is not asked for one");
    refused(run(ids.get(1), "1"), "lies in dish 2, not in 1");
  }

  @Test
  void a_dish_number_of_two_cycles_names_no_filter() throws Exception {
    redryInDishes();
    dishes.put(ids.get(3), "1");
    dry(List.of(ids.get(3)));
    refused(run("1"), "several filters", ids.get(0), ids.get(3));
  }
}
