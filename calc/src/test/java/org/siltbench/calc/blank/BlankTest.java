package org.siltbench.calc.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.siltbench.calc.blank.BlankRule.Use;
import org.siltbench.calc.quantity.Mass;

final class BlankTest {

  private static final BlankRule SUBTRACT =
      new BlankRule(Use.SUBTRACT, BlankKind.METHOD, 2, null, null, null);

  private static BlankTally tally(BlankRule rule, String... milligrams) {
    BlankTally tally = new BlankTally(rule);
    for (String residue : milligrams) {
      tally.add(BlankKind.METHOD, Mass.ofMilligrams(residue), null);
    }
    return tally;
  }

  // The seven blanks of the 40 CFR 136 example: mean 0.15714, s 0.17182.
  @Test
  void the_mean_of_the_blanks_is_subtracted_with_the_uncertainty_of_the_mean() {
    BlankTally seven = tally(SUBTRACT, "0.2", "-0.1", "0.3", "0.1", "0.0", "0.2", "0.4");
    BlankCorrection correction = BlankCorrection.of(seven, 0.05, 0);
    assertEquals(0.15714, correction.milligrams(), 5e-6);
    assertEquals(0.17182 / Math.sqrt(7), correction.u(), 5e-6);
    assertEquals(6, correction.dof());
    assertEquals(7, correction.blanks());
  }

  @Test
  void blanks_that_are_all_equal_are_not_known_better_than_weighing_allows() {
    BlankCorrection correction =
        BlankCorrection.of(tally(SUBTRACT, "0.2", "0.2", "0.2", "0.2"), 0.14, 0);
    assertEquals(0.2, correction.milligrams(), 1e-15);
    assertEquals(0.07, correction.u(), 1e-15);
    assertTrue(Double.isInfinite(correction.dof()));
  }

  @Test
  void one_blank_has_the_uncertainty_of_its_weighing() {
    BlankCorrection correction = BlankCorrection.of(tally(SUBTRACT, "-0.3"), 0.14, 0);
    assertEquals(-0.3, correction.milligrams(), 1e-15);
    assertEquals(0.14, correction.u(), 1e-15);
    assertTrue(Double.isInfinite(correction.dof()));
    assertEquals(1, correction.blanks());
  }

  @Test
  void two_blanks_far_apart_have_one_degree_of_freedom() {
    BlankCorrection correction = BlankCorrection.of(tally(SUBTRACT, "0", "1"), 0.14, 0);
    assertEquals(0.5, correction.u(), 1e-15);
    assertEquals(1, correction.dof());
  }

  @Test
  void the_method_s_own_figure_is_the_least_uncertainty() {
    assertEquals(0.3, BlankCorrection.of(tally(SUBTRACT, "0.2"), 0.14, 0.3).u());
    assertEquals(0.3, BlankCorrection.of(tally(SUBTRACT, "0.2", "0.3"), 0.14, 0.3).u());
    assertEquals(0.5, BlankCorrection.of(tally(SUBTRACT, "0", "1"), 0.14, 0.3).u(), 1e-15);
  }

  @Test
  void without_a_blank_nothing_is_subtracted_and_it_is_said() {
    BlankCorrection none = BlankCorrection.of(tally(SUBTRACT), 0.14, 0.3);
    assertEquals(0, none.milligrams());
    assertEquals(0.3, none.u());
    assertEquals(0, none.blanks());
    assertTrue(BlankCorrection.isMissing(tally(SUBTRACT)));
    assertFalse(BlankCorrection.isMissing(tally(SUBTRACT, "0.1")));
  }

  @ParameterizedTest
  @EnumSource(
      value = Use.class,
      names = {"NONE", "CONTROL_ONLY"})
  void other_uses_subtract_nothing(Use use) {
    BlankRule rule = new BlankRule(use, BlankKind.METHOD, 1, null, null, null);
    assertSame(BlankCorrection.NONE, BlankCorrection.of(tally(rule, "0.4", "0.6"), 0.14, 0.3));
    assertFalse(BlankCorrection.isMissing(tally(rule)));
  }

  @ParameterizedTest
  @EnumSource(value = BlankKind.class, names = "METHOD", mode = EnumSource.Mode.EXCLUDE)
  void kinds_are_never_mixed(BlankKind other) {
    BlankTally tally = tally(SUBTRACT, "0.2");
    tally.add(other, Mass.ofMilligrams("5"), null);
    assertEquals(0.2, BlankCorrection.of(tally, 0.14, 0).milligrams(), 1e-15);
    assertEquals(1, tally.count(BlankKind.METHOD));
    assertEquals(1, tally.count(other));
    assertNotNull(tally.summary(other));
    assertNull(tally(SUBTRACT).summary(other));
    assertEquals(0, tally(SUBTRACT).count(other));
  }

  @Test
  void a_blank_that_reaches_its_limit_is_out_whatever_its_sign() {
    BlankRule rule =
        new BlankRule(Use.CONTROL_ONLY, BlankKind.METHOD, 1, Mass.ofMilligrams("0.5"), 2.5, null);
    assertFalse(rule.isHigh(Mass.ofMilligrams("0.499999"), null));
    assertTrue(rule.isHigh(Mass.ofMilligrams("0.5"), null));
    assertTrue(rule.isHigh(Mass.ofMilligrams("-0.5"), null));
    // SM 2020 B.2.d: method blank guide limit below 2.5 mg/L.
    assertFalse(rule.isHigh(Mass.ZERO, 2.4999));
    assertTrue(rule.isHigh(Mass.ZERO, 2.5));
    assertTrue(rule.isHigh(Mass.ZERO, -2.5));
    assertFalse(SUBTRACT.isHigh(Mass.ofMilligrams("99"), 99.0));
    BlankTally tally = new BlankTally(rule);
    assertTrue(tally.add(BlankKind.FIELD, Mass.ofMilligrams("0.6"), null));
    assertFalse(tally.add(BlankKind.FIELD, Mass.ofMilligrams("0.1"), null));
    assertFalse(tally.add(BlankKind.FIELD, Mass.ofMilligrams("-0.1"), null));
    assertEquals(1, tally.highCount(BlankKind.FIELD));
    assertEquals(0, tally.highCount(BlankKind.METHOD));
    assertSame(rule, tally.rule());
  }

  // SM 2020 B.2.d: at least one per batch of at most 20 samples.
  @Test
  void each_analytical_batch_needs_its_blanks() {
    assertEquals(0, SUBTRACT.needed(0, 20));
    assertEquals(2, SUBTRACT.needed(1, 20));
    assertEquals(2, SUBTRACT.needed(20, 20));
    assertEquals(4, SUBTRACT.needed(21, 20));
    BlankRule none = new BlankRule(Use.NONE, BlankKind.METHOD, 2, null, null, null);
    assertEquals(0, none.needed(100, 20));
  }

  // ISO 11923, from memory: blank filter loss below 0.017 mg/cm2; a 47 mm filter has 17.35 cm2.
  @Test
  void a_lot_passes_when_every_filter_loses_less_than_the_limit() {
    double area = Math.PI * 4.7 * 4.7 / 4;
    LotLoss good = LotLoss.of(List.of(Mass.ofMilligrams("0.1"), Mass.ofMilligrams("0.2")), area);
    assertEquals(0.15 / area, good.meanMgPerCm2(), 1e-12);
    assertEquals(0.2 / area, good.worstMgPerCm2(), 1e-12);
    assertEquals(2, good.filters());
    assertTrue(good.passes(0.017));
    assertFalse(LotLoss.of(List.of(Mass.ofMilligrams("0.3"), Mass.ZERO), area).passes(0.017));
    assertFalse(LotLoss.of(List.of(Mass.ofMilligrams("0.17")), 10).passes(0.017));
    assertTrue(LotLoss.of(List.of(Mass.ofMilligrams("-0.3")), area).meanMgPerCm2() < 0);
    assertThrows(IllegalArgumentException.class, () -> LotLoss.of(List.of(), area));
    assertThrows(IllegalArgumentException.class, () -> LotLoss.of(List.of(Mass.ZERO), 0));
  }

  @Test
  void a_rule_out_of_range_is_refused() {
    assertEquals(
        0, new BlankRule(Use.NONE, BlankKind.METHOD, 0, new Mass(1), 1e-9, 1e-9).minCount());
    assertThrows(
        IllegalArgumentException.class,
        () -> new BlankRule(Use.NONE, BlankKind.METHOD, 0, null, null, 0.0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new BlankRule(Use.NONE, BlankKind.METHOD, -1, null, null, null));
    assertThrows(
        IllegalArgumentException.class,
        () -> new BlankRule(Use.NONE, BlankKind.METHOD, 0, Mass.ZERO, null, null));
    assertThrows(
        IllegalArgumentException.class,
        () -> new BlankRule(Use.NONE, BlankKind.METHOD, 0, null, 0.0, null));
    assertThrows(
        IllegalArgumentException.class,
        () -> new BlankRule(Use.NONE, BlankKind.METHOD, 0, null, null, Double.NaN));
  }

  @Test
  void the_words_of_roles_name_the_kinds() {
    assertEquals(BlankKind.METHOD, BlankCorrection.kindOf("method-blank"));
    assertEquals(BlankKind.CONTROL, BlankCorrection.kindOf("control"));
    assertNull(BlankCorrection.kindOf("sample"));
    assertNull(BlankCorrection.kindOf("lot-loss"));
    assertEquals("lot-loss", BlankKind.LOT_LOSS.word());
    assertEquals("control-only", Use.CONTROL_ONLY.word());
  }
}
