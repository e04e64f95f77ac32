package org.siltbench.calc.constant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.siltbench.calc.constant.ConstantRule.Base;
import org.siltbench.calc.constant.ConstantRule.Direction;
import org.siltbench.calc.constant.ConstantVerdict.Kind;
import org.siltbench.calc.quantity.Mass;

final class ConstantVerdictTest {

  private static final Mass HALF = Mass.ofMilligrams("0.5");
  private static final Mass PRE = Mass.ofMilligrams("100");
  private static final Mass FINE = Mass.ofMilligrams("0.1");

  private static ConstantVerdict judge(ConstantRule rule, String... milligrams) {
    List<Mass> masses = new ArrayList<>();
    for (String text : milligrams) {
      masses.add(Mass.ofMilligrams(text));
    }
    return ConstantVerdict.of(rule, masses, PRE, FINE, FINE);
  }

  // EPA 160.2, from memory: "until a constant weight is obtained or until weight loss is less than
  // 0.5 mg".
  @ParameterizedTest
  @CsvSource({
    "120.0, 119.500001, CONSTANT",
    "120.0, 119.5, DRY_AGAIN",
    "120.0, 119.4, DRY_AGAIN",
    "120.0, 120.0, CONSTANT",
    "120.0, 120.5, CONSTANT",
    "120.0, 120.500001, DRY_AGAIN"
  })
  void a_loss_below_half_a_milligram_is_constant_and_a_gain_beyond_it_is_not(
      String first, String second, Kind kind) {
    ConstantRule epa = new ConstantRule(HALF, null, Base.RESIDUE, Direction.LOSS, true);
    assertEquals(kind, judge(epa, first, second).kind());
  }

  // SM 2540 D up to the 22nd edition, from memory: less than 4 % of the previous weight or 0.5 mg,
  // whichever is less. With the residue as base the two limits meet at a residue of 12.5 mg.
  @ParameterizedTest
  @CsvSource({
    "105.0, 104.81, 0.2, CONSTANT",
    "105.0, 104.8, 0.2, DRY_AGAIN",
    "105.0, 105.19, 0.2, CONSTANT",
    "105.0, 105.2, 0.2, DRY_AGAIN",
    "112.5, 112.01, 0.5, CONSTANT",
    "112.5, 112.0, 0.5, DRY_AGAIN",
    "112.475, 112.0, 0.499, CONSTANT",
    "150.0, 149.51, 0.5, CONSTANT",
    "150.0, 149.5, 0.5, DRY_AGAIN"
  })
  void the_lesser_of_4_percent_of_the_residue_and_half_a_milligram_is_the_limit(
      String first, String second, String limit, Kind kind) {
    ConstantRule sm =
        new ConstantRule(HALF, new BigDecimal("4"), Base.RESIDUE, Direction.BOTH, true);
    ConstantVerdict verdict = judge(sm, first, second);
    assertEquals(kind, verdict.kind());
    assertEquals(Mass.ofMilligrams(limit), verdict.limit());
  }

  @Test
  void of_filter_and_residue_four_percent_is_never_the_lesser_for_a_usual_filter() {
    ConstantRule sm =
        new ConstantRule(HALF, new BigDecimal("4"), Base.FILTER_AND_RESIDUE, Direction.BOTH, true);
    assertEquals(HALF, judge(sm, "105.0", "104.9").limit());
    ConstantRule percentOnly =
        new ConstantRule(null, new BigDecimal("4"), Base.FILTER_AND_RESIDUE, Direction.BOTH, true);
    assertEquals(Mass.ofMilligrams("4.2"), judge(percentOnly, "105.0", "104.9").limit());
    assertFalse(percentOnly.needsPreMass());
    assertTrue(
        new ConstantRule(null, BigDecimal.ONE, Base.RESIDUE, Direction.BOTH, true).needsPreMass());
    assertFalse(ConstantRule.within(HALF, true).needsPreMass());
  }

  @Test
  void a_rule_that_is_not_strict_lets_the_limit_itself_pass_both_ways() {
    ConstantRule lenient = ConstantRule.within(HALF, false);
    assertTrue(judge(lenient, "120", "119.5").isConstant());
    assertTrue(judge(lenient, "120", "120.5").isConstant());
    assertFalse(judge(lenient, "120", "119.499999").isConstant());
    ConstantRule strict = ConstantRule.within(HALF, true);
    assertFalse(judge(strict, "120", "119.5").isConstant());
    assertFalse(judge(strict, "120", "120.5").isConstant());
  }

  @Test
  void only_the_last_two_weighings_decide() {
    ConstantRule rule = ConstantRule.within(HALF, true);
    assertFalse(judge(rule, "120", "120", "121").isConstant());
    assertTrue(judge(rule, "130", "121", "120.8").isConstant());
    assertEquals(Mass.ofMilligrams("-0.2"), judge(rule, "130", "121", "120.8").change());
  }

  @Test
  void one_weighing_or_none_or_no_rule_is_not_tested() {
    ConstantRule rule = ConstantRule.within(HALF, true);
    assertEquals(Kind.NOT_TESTED, judge(rule).kind());
    ConstantVerdict one = judge(rule, "120");
    assertEquals(Kind.NOT_TESTED, one.kind());
    assertNull(one.change());
    assertTrue(one.why().contains("two weighings"));
    ConstantVerdict none = ConstantVerdict.of(null, List.of(PRE, PRE), null, null, null);
    assertEquals(Kind.NOT_TESTED, none.kind());
    assertTrue(none.why().contains("no test"));
  }

  @Test
  void a_balance_in_steps_of_1_mg_cannot_judge_and_the_verdict_is_unknown() {
    ConstantRule rule = ConstantRule.within(HALF, true);
    List<Mass> same = List.of(PRE, PRE);
    ConstantVerdict coarse = ConstantVerdict.of(rule, same, PRE, Mass.ofMilligrams("1"), FINE);
    assertEquals(Kind.UNKNOWN, coarse.kind());
    assertEquals(Mass.ZERO, coarse.change());
    assertTrue(coarse.why().contains("1 mg") && coarse.why().contains("0.1 mg"), coarse.why());
    assertTrue(ConstantVerdict.of(rule, same, PRE, FINE, FINE).isConstant());
    assertTrue(ConstantVerdict.of(rule, same, PRE, null, FINE).isConstant());
    assertTrue(ConstantVerdict.of(rule, same, PRE, FINE, null).isConstant());
  }

  @Test
  void a_limit_that_depends_on_the_residue_needs_the_pre_weigh_mass() {
    ConstantRule sm =
        new ConstantRule(HALF, new BigDecimal("4"), Base.RESIDUE, Direction.BOTH, true);
    ConstantVerdict verdict = ConstantVerdict.of(sm, List.of(PRE, PRE), null, FINE, FINE);
    assertEquals(Kind.UNKNOWN, verdict.kind());
    assertTrue(verdict.why().contains("pre-weigh"), verdict.why());
    ConstantRule absolute = ConstantRule.within(HALF, true);
    assertTrue(ConstantVerdict.of(absolute, List.of(PRE, PRE), null, FINE, FINE).isConstant());
  }

  @Test
  void a_residue_of_zero_or_below_has_a_stated_answer() {
    ConstantRule sm =
        new ConstantRule(HALF, new BigDecimal("4"), Base.RESIDUE, Direction.BOTH, true);
    assertTrue(judge(sm, "100", "100").isConstant());
    // 4 % of nothing is nothing: the coarsest step the method allows, 0.1 mg here, counts instead.
    assertEquals(FINE, judge(sm, "100", "100.05").limit());
    assertTrue(judge(sm, "100", "100.099999").isConstant());
    assertEquals(Kind.DRY_AGAIN, judge(sm, "100", "100.1").kind());
    // 4 % of a residue of -2 mg would be 0.08 mg, finer than that step; of 5 mg it is 0.2 mg.
    assertEquals(FINE, judge(sm, "98", "97.95").limit());
    assertEquals(Mass.ofMilligrams("0.2"), judge(sm, "105", "104.95").limit());
  }

  @Test
  void the_person_is_told_the_change_the_limit_and_what_to_do() {
    ConstantRule rule = ConstantRule.within(HALF, true);
    assertEquals("No change; the limit is 0.5 mg.", judge(rule, "120", "120").why());
    assertEquals("Lost 0.3 mg; the limit is 0.5 mg.", judge(rule, "120", "119.7").why());
    assertEquals(
        "Lost 0.7 mg, the limit is 0.5 mg: dry, cool and weigh again.",
        judge(rule, "120", "119.3").why());
    assertTrue(judge(rule, "120", "120.7").why().startsWith("Gained 0.7 mg"));
    assertTrue(judge(rule, "120", "120.7").why().contains("moisture"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "100.1"})
  void a_percentage_out_of_range_is_refused(String percent) {
    BigDecimal number = new BigDecimal(percent);
    assertThrows(
        IllegalArgumentException.class,
        () -> new ConstantRule(null, number, Base.RESIDUE, Direction.BOTH, true));
  }

  @Test
  void a_rule_without_a_limit_or_with_a_limit_of_zero_is_refused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new ConstantRule(null, null, Base.RESIDUE, Direction.BOTH, true));
    assertThrows(IllegalArgumentException.class, () -> ConstantRule.within(Mass.ZERO, true));
    assertEquals(
        new BigDecimal("100"),
        new ConstantRule(null, new BigDecimal("100"), Base.RESIDUE, Direction.BOTH, true)
            .percent()
            .setScale(0));
    assertEquals(
        new ConstantRule(null, new BigDecimal("4.0"), Base.RESIDUE, Direction.BOTH, true),
        new ConstantRule(null, new BigDecimal("4"), Base.RESIDUE, Direction.BOTH, true));
  }

  @Test
  void the_words_for_scripts_are_the_contract() {
    assertEquals("constant", Kind.CONSTANT.word());
    assertEquals("dry-again", Kind.DRY_AGAIN.word());
    assertEquals("not-tested", Kind.NOT_TESTED.word());
    assertEquals("unknown", Kind.UNKNOWN.word());
  }

  @Test
  void the_counting_mass_is_the_last_the_lowest_or_the_mean_of_the_last_two() {
    List<Mass> masses =
        List.of(Mass.ofMilligrams("120.0"), Mass.ofMilligrams("119.1"), Mass.ofMilligrams("119.4"));
    assertEquals(Mass.ofMilligrams("119.4"), CountingMass.LAST.of(masses));
    assertEquals(Mass.ofMilligrams("119.1"), CountingMass.LOWEST.of(masses));
    assertEquals(Mass.ofMilligrams("119.25"), CountingMass.MEAN_OF_PAIR.of(masses));
    assertEquals(Mass.ofMilligrams("120"), CountingMass.MEAN_OF_PAIR.of(masses.subList(0, 1)));
    assertEquals(new Mass(2), CountingMass.MEAN_OF_PAIR.of(List.of(new Mass(2), new Mass(3))));
    assertEquals(new Mass(4), CountingMass.MEAN_OF_PAIR.of(List.of(new Mass(3), new Mass(4))));
    for (CountingMass counts : CountingMass.values()) {
      assertThrows(IllegalArgumentException.class, () -> counts.of(List.of()));
    }
  }
}
