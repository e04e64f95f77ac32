package org.siltbench.station.work.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.TestLab;
import org.siltbench.station.life.TwoBenches;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.correct.Correction;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.today.Due;
import org.siltbench.station.work.today.DueList;

/** What counts towards a bracketing check, and what begins the count anew. */
class SinceCheckTest {

  @TempDir Path folder;
  private TestLab lab;
  private int round;

  @BeforeEach
  void open() {
    lab = new TestLab(folder.resolve("lab"), 7);
  }

  @AfterEach
  void close() {
    lab.close();
  }

  private Entry check(String balance, boolean pass) {
    return lab.write("check.weighed", "balance", balance, "weight", "100mg", "pass", pass);
  }

  private Entry weighing(String balance, Object... more) {
    return lab.write("weighing", fields(balance, more));
  }

  private Object[] fields(String balance, Object... more) {
    Object[] usual = {
      "filter", "K3DF07-1", "status", "pre", "round", (long) ++round, "mass_g", "0.11234"
    };
    Object[] all = java.util.Arrays.copyOf(usual, usual.length + 2 + more.length);
    all[usual.length] = "balance";
    all[usual.length + 1] = balance;
    System.arraycopy(more, 0, all, usual.length + 2, more.length);
    return all;
  }

  private void weighings(int count) {
    for (int i = 0; i < count; i++) {
      weighing("B1");
    }
  }

  private static int count(Bench bench, TestLab by, String balance) {
    return SinceCheck.count(
        bench.register(), balance, LocalDate.now(by.clock()), by.clock().getZone());
  }

  private int count(String balance) {
    return count(lab.bench(), lab, balance);
  }

  private CheckState state() {
    return CheckState.of(
        lab.bench().register(), "B1", LocalDate.now(lab.clock()), lab.clock().getZone());
  }

  /** A method of the lab's own that stops, with a check after so many weighings. */
  private void adopt(String key, String missing, int every) throws Exception {
    Path methods = Files.createDirectories(folder.resolve("methods"));
    Files.writeString(
        methods.resolve(key + ".method"),
        MethodBook.of(folder.resolve("none"))
            .get("epa-160.2")
            .text()
            .replace("epa-160.2", key)
            .replaceFirst("check_every = *20", "check_every = " + every)
            .replaceFirst("missing_check = *warn", "missing_check = " + missing));
    lab.bench().act(view -> MethodBook.of(folder).adopt(view, key));
  }

  @Test
  void repeats_audits_and_masses_of_any_method_count_and_keyed_ones_do_not() {
    check("B1", true);
    weighing("B1");
    weighing("B1", "purpose", "repeat");
    weighing("B1", "purpose", "audit");
    weighing("B1", "purpose", "lot");
    weighing("B1", "stability", "two presses");
    weighing("B1", "keyed", true, "observed", false);
    weighing("B2");
    assertEquals(5, count("B1"));
    assertEquals(1, count("B2"));
  }

  @Test
  void a_mass_taken_back_lay_on_the_pan_all_the_same() {
    check("B1", true);
    Entry mass = weighing("B1");
    new Correction(mass.ref(), Map.of("void", "yes"), "wrong filter").record(lab.bench());
    assertEquals(1, count("B1"));
  }

  @Test
  void a_passed_check_of_this_balance_begins_anew_and_a_failed_one_does_not() {
    check("B1", true);
    weighings(2);
    check("B2", true);
    check("B1", false);
    weighings(1);
    assertEquals(3, count("B1"));
    check("B1", true);
    assertEquals(0, count("B1"));
  }

  @Test
  void a_check_that_is_taken_back_or_turned_round_counts_as_corrected() {
    check("B1", true);
    weighings(2);
    Entry second = check("B1", true);
    weighings(1);
    assertEquals(1, count("B1"));
    new Correction(second.ref(), Map.of("void", "yes"), "the wrong weight lay there")
        .record(lab.bench());
    assertEquals(3, count("B1"));
  }

  @Test
  void a_new_day_begins_with_its_own_check() {
    check("B1", true);
    weighings(3);
    lab.clock().advance(Duration.ofDays(1));
    assertEquals(0, count("B1"));
    weighings(1);
    assertEquals(1, count("B1"));
  }

  @Test
  void a_bench_opened_again_and_a_register_made_anew_count_the_same() {
    check("B1", true);
    weighings(4);
    lab.reopen();
    assertEquals(4, count("B1"));
    ((OpenLab) lab.bench()).rebuild();
    assertEquals(4, count("B1"));
  }

  /** Whatever the order in which two benches hear of each other. */
  @Test
  void two_benches_that_share_a_balance_count_the_same_once_they_have_met() {
    for (int seed = 0; seed < 5; seed++) {
      Random random = new Random(seed);
      Path place = folder.resolve("s" + seed);
      try (TwoBenches both = new TwoBenches(place, seed, lab.clock())) {
        both.work(random, 40, Duration.ofMinutes(2), 5, SinceCheckTest::write);
        int counted = count(both.left(), lab, "B1");
        assertEquals(counted, count(both.right(), lab, "B1"), "seed " + seed);
        both.right().rebuild();
        assertEquals(counted, count(both.right(), lab, "B1"), "rebuilt, seed " + seed);
      }
    }
  }

  private static void write(OpenLab here, Random random) {
    Facts facts = new Facts().put("balance", "B1");
    boolean check = random.nextInt(8) == 0;
    here.act(
        view ->
            List.of(
                check
                    ? facts.put("pass", random.nextBoolean()).draft("check.weighed")
                    : facts.put("filter", "K3DF07-1").put("mass_g", "0.1").draft("weighing")));
  }

  @Test
  void it_is_due_under_the_strictest_adopted_method_that_stops_and_under_no_other()
      throws Exception {
    check("B1", true);
    weighings(3);
    assertFalse(state().bracketDue(), "no method, no rule");
    adopt("easy", "warn", 2);
    adopt("slack", "stop", 9);
    assertFalse(state().bracketDue());
    adopt("strict", "stop", 3);
    assertTrue(state().bracketDue());
    assertTrue(state().passed());
    assertFalse(state().clear());
    assertTrue(state().fault().english().startsWith("3 weighings"), state().fault().english());
    assertTrue(checkDue(), "it is among what is to be done");
    check("B1", true);
    assertTrue(state().clear());
    assertFalse(checkDue());
  }

  private boolean checkDue() {
    return DueList.of(lab.bench().register(), "B1", lab.clock()).stream()
        .anyMatch(due -> due.what() == Due.What.CHECK);
  }

  private Entry weighOn() {
    lab.clock().advance(Duration.ofSeconds(1));
    return new CheckOverride("B1", "the weight is being cleaned").record(lab.bench());
  }

  @Test
  void a_due_bracketing_check_is_overridden_for_as_many_weighings_and_then_said_anew()
      throws Exception {
    adopt("strict", "stop", 3);
    check("B1", true);
    weighings(2);
    assertThrows(Problem.Refused.class, this::weighOn, "nothing is due yet");
    weighings(1);
    Entry said = weighOn();
    assertEquals("missing", said.data().get("fault"));
    assertFalse(said.data().containsKey("check"), "the passed one is not set aside");
    assertEquals(0, count("B1"));
    assertTrue(state().covered());
    assertTrue(state().inSpite().english().startsWith("A bracketing check was due. AB has said"));
    assertTrue(state().inSpite().in(Locale.GERMAN).startsWith("Eine Zwischenprüfung war fällig."));
    assertThrows(Problem.Refused.class, this::weighOn, "it is said once");
    weighings(3);
    assertFalse(state().covered(), "due again");
    assertTrue(state().fault().english().startsWith("3 weighings"), state().fault().english());
    weighOn();
    assertTrue(state().covered());
    check("B1", false);
    assertEquals(6, count("B1"), "a failed check ends the word and passes nothing");
    assertEquals("failed", weighOn().data().get("fault"));
  }
}
