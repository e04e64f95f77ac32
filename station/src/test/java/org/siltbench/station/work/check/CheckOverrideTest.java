package org.siltbench.station.work.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.siltbench.station.bench.Labs;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.TestLab;
import org.siltbench.station.life.TwoBenches;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.correct.Correction;

/** How long a supervisor's word holds, and what it cannot do. */
class CheckOverrideTest {

  @TempDir Path folder;
  private TestLab lab;

  @BeforeEach
  void open() {
    lab = new TestLab(folder.resolve("lab"), 7);
  }

  @AfterEach
  void close() {
    lab.close();
  }

  private void check(String balance, boolean pass) {
    lab.write("check.weighed", "balance", balance, "weight", "100mg", "pass", pass);
  }

  private CheckState state(String balance) {
    return CheckState.of(
        lab.bench().register(), balance, LocalDate.now(lab.clock()), lab.clock().getZone());
  }

  private Entry weighOn(String balance) {
    lab.clock().advance(Duration.ofSeconds(1));
    return new CheckOverride(balance, "the weight was dropped").record(lab.bench());
  }

  @Test
  void it_names_what_was_wrong_and_the_check_it_sets_aside() {
    Entry missing = weighOn("B1");
    assertEquals("missing", missing.data().get("fault"));
    assertFalse(missing.data().containsKey("check"));
    assertTrue(missing.must());
    check("B2", false);
    Entry failed = weighOn("B2");
    assertEquals("failed", failed.data().get("fault"));
    assertEquals(state("B2").last().orElseThrow().ref().toString(), failed.data().get("check"));
  }

  @Test
  void it_is_no_pass_and_says_who_when_and_why() {
    check("B1", false);
    weighOn("B1");
    assertFalse(state("B1").passed());
    String words = state("B1").inSpite().english();
    assertTrue(words.contains("AB has said at 08:00"), words);
    assertTrue(words.contains("the weight was dropped"), words);
    assertTrue(state("B1").inSpite().in(Locale.GERMAN).contains("08:00 Uhr"));
  }

  @Test
  void the_next_check_of_this_balance_ends_it_whatever_it_says() {
    for (boolean pass : new boolean[] {true, false}) {
      check("B1", false);
      weighOn("B1");
      check("B2", true);
      assertTrue(state("B1").override().isPresent());
      check("B1", pass);
      assertTrue(state("B1").override().isEmpty());
    }
  }

  @Test
  void the_end_of_the_day_ends_it() {
    weighOn("B1");
    lab.clock().advance(Duration.ofHours(15));
    assertTrue(state("B1").override().isPresent(), "23:00");
    lab.clock().advance(Duration.ofHours(2));
    assertTrue(state("B1").override().isEmpty(), "the day after");
  }

  @Test
  void another_balance_is_not_meant() {
    weighOn("B1");
    assertTrue(state("B2").override().isEmpty());
  }

  @Test
  void there_must_be_something_to_override_and_a_reason_and_it_is_said_once() {
    check("B1", true);
    assertThrows(Problem.Refused.class, () -> weighOn("B1"));
    assertThrows(Problem.WrongUse.class, () -> new CheckOverride("B2", " "));
    weighOn("B2");
    Problem.Refused twice = assertThrows(Problem.Refused.class, () -> weighOn("B2"));
    assertTrue(twice.what().contains("AB"), twice.what());
    assertEquals(1, overrides("B2"));
    assertEquals(0, overrides("B1"));
  }

  private int overrides(String balance) {
    return org.siltbench.station.life.BalanceState.fold(
            balance,
            lab.bench().register().history(org.siltbench.station.life.About.balance(balance)))
        .orElseThrow()
        .overrides()
        .size();
  }

  @Test
  void what_was_said_stands_for_good() {
    Entry said = weighOn("B1");
    Correction back = new Correction(said.ref(), Map.of("void", "yes"), "we thought better of it");
    Problem.Refused no = assertThrows(Problem.Refused.class, () -> back.record(lab.bench()));
    assertTrue(no.what().contains("check.overridden"), no.what());
    assertTrue(state("B1").override().isPresent());
  }

  /** Whatever the order in which two benches hear of each other, and made anew. */
  @Test
  void two_benches_and_a_rebuild_say_the_same() {
    for (int seed = 0; seed < 5; seed++) {
      Random random = new Random(seed);
      Path place = folder.resolve("s" + seed);
      try (TwoBenches both = new TwoBenches(place, seed, lab.clock())) {
        both.work(random, 30, Duration.ofMinutes(7), 4, CheckOverrideTest::write);
        String export = Labs.export(both.left());
        assertEquals(export, Labs.export(both.right()), "seed " + seed);
        both.right().rebuild();
        assertEquals(export, Labs.export(both.right()), "rebuilt, seed " + seed);
        assertTrue(export.contains("overrides"), export);
      }
    }
  }

  private static void write(OpenLab here, Random random) {
    String balance = "B" + random.nextInt(2);
    if (random.nextInt(3) > 0) {
      here.act(
          view ->
              List.of(
                  new Facts()
                      .put("balance", balance)
                      .put("pass", random.nextInt(4) == 0)
                      .draft("check.weighed")));
      return;
    }
    try {
      new CheckOverride(balance, "shift ends").record(here);
    } catch (Problem.Refused nothingToOverride) {
      assertFalse(nothingToOverride.next().isEmpty());
    }
  }
}
