package org.siltbench.calc.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.calc.constant.ConstantRule;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.duplicates.DuplicatePair;
import org.siltbench.calc.quantity.Mass;

final class MethodTextTest {

  private static final String TEXT = Method.parse(Presets.text("sm-2540d-22")).text();

  private static String with(String key, String value) {
    return TEXT.replaceFirst("(?m)^" + key + " = .*$", key + " = " + value);
  }

  private static List<MethodFault> faults(String text) {
    return assertThrows(MethodException.class, () -> Method.parse(text)).faults();
  }

  private static MethodFault fault(String key, String value) {
    List<MethodFault> faults = faults(with(key, value));
    assertEquals(1, faults.size(), faults.toString());
    return faults.get(0);
  }

  // Each number at both ends of its range, just beyond, and as nonsense.
  @ParameterizedTest
  @CsvSource({
    "dry_first_min, 1, 10080, 0.9, 10080.1",
    "dry_later_min, 1, 10080, 0, 10081",
    "cool_min, 0, 10080, -1, 10081",
    "useful_min, 0, 10080, -1, 10081",
    "max_cycles, 1, 99, 0, 100",
    "coarsest_step_mg, 0.0001, 1000, 0.00001, 1000.1",
    "constant_mg, 0.000001, 100000, 0, 100001",
    "constant_pct, 0.1, 100, 0, 100.1",
    "preconstant_mg, 0.000001, 100000, 0, 100001",
    "blank_min_count, 0, 1000, -1, 1001",
    "blank_limit_mg, 0.000001, 100000, 0, 100001",
    "blank_limit_mg_l, 0.000001, 1000000000, 0, 1000000001",
    "blank_loss_mg_cm2, 0.000001, 1000, 0, 1001",
    "residue_min_mg, 0, 200, -1, 1000001",
    "residue_max_mg, 2.5, 1000000, -1, 1000001",
    "residue_stop_below_mg, -100000, 0, -100001, 0.1",
    "check_limit_mg, 0.000001, 100000, 0, 100001",
    "check_every, 1, 10000, 0, 10001",
    "moisture_allowance_mg, 0, 100000, -1, 100001",
    "holding_days, 0, 3650, -1, 3651",
    "volume_min_ml, 0.001, 5000, 0, 1000001",
    "volume_max_ml, 1, 1000000, 0, 1000001",
    "slow_filtration_min, 0, 10080, -1, 10081",
    "batch_size, 1, 10000, 0, 10001",
    "u_mass_mg, 0, 100000, -1, 100001",
    "u_mass_dof, 1, inf, 0.9, -inf",
    "u_moisture_mg, 0, 100000, -1, 100001",
    "u_blank_mg, 0, 100000, -1, 100001",
    "u_volume_reading_ml, 0, 1000000, -1, 1000001",
    "u_volume_calibration_pct, 0, 100, -1, 101",
    "u_volume_temperature_pct, 0, 100, -1, 101",
    "u_subsampling_pct, 0, 100, -1, 101",
    "report_digits, 1, 9, 0, 10",
    "report_limit_residue_mg, 0, 100000, -1, 100001",
    "report_limit_mg_l, 0, 1000000000, -1, 1000000001",
    "duplicate_every, 0, 10000, -1, 10001",
    "duplicate_limit_pct, 0.001, 200, 0, 201",
    "duplicate_low_factor, 0, 1000, -1, 1001"
  })
  void a_number_is_taken_up_to_its_ends_and_refused_beyond(
      String key, String low, String high, String below, String above) {
    for (String good : List.of(low, high)) {
      Method method = Method.parse(with(key, good));
      assertTrue(method.text().contains("\n" + key + " = " + good + "\n"), method.text());
      assertEquals(method, Method.parse(method.text()));
    }
    for (String wrong : List.of(below, above, "NaN", "1e3", "1,5", "five")) {
      MethodFault fault = fault(key, wrong);
      assertEquals(key, fault.key());
      assertEquals(wrong, fault.found());
      assertEquals(TEXT.lines().toList().indexOf(line(key)) + 1, fault.line());
      assertTrue(fault.expected().contains("number"), fault.expected());
    }
  }

  private static String line(String key) {
    return TEXT.lines().filter(l -> l.startsWith(key + " = ")).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "parameter, volatile-suspended-solids, tss",
    "taken, whole, half",
    "constant_base, filter-and-residue, filter",
    "constant_direction, loss, gain",
    "constant_strict, no, true",
    "preconstant_base, filter-and-residue, x",
    "preconstant_direction, loss, x",
    "preconstant_strict, no, maybe",
    "counting_mass, mean-of-pair, mean",
    "blank_use, subtract, yes",
    "blank_kind, field-blank, lot-loss",
    "missing_check, stop, ignore",
    "key, ours.1-a, Our Method"
  })
  void a_word_is_one_of_its_choices(String key, String good, String wrong) {
    Method method = Method.parse(with(key, good));
    assertTrue(method.text().contains("\n" + key + " = " + good + "\n") || key.equals("key"));
    assertEquals(method, Method.parse(method.text()));
    assertNotEquals(TEXT, method.text());
    MethodFault fault = fault(key, wrong);
    assertEquals(key, fault.key());
    assertEquals(wrong, fault.found());
  }

  @Test
  void the_numbers_land_where_they_belong() {
    Method m = Method.parse(Presets.text("sm-2540d-22"));
    assertEquals("sm-2540d-22", m.key());
    assertTrue(m.title().startsWith("Total suspended solids"));
    assertTrue(m.standard().contains("2540 D"));
    assertEquals("22nd (2012)", m.edition());
    assertEquals(Parameter.TOTAL_SUSPENDED_SOLIDS, m.parameter());
    assertEquals("Total suspended solids", m.parameter().title());
    assertEquals(Taken.ALIQUOT, m.taken());
    assertEquals(new Drying(new Span(103, 105), 60, 60, 30, 240), m.drying());
    ConstantRule rule = m.constancy().postRule();
    assertNotNull(rule);
    assertEquals(Mass.ofMilligrams("0.5"), rule.absolute());
    assertTrue(rule.strict() && rule.needsPreMass());
    assertEquals(5, m.constancy().maxCycles());
    assertEquals(Mass.ofMilligrams("2.5"), m.residue().min());
    assertEquals(Mass.ofMilligrams("-1"), m.residue().stopBelow());
    assertEquals(BalanceRule.MissingCheck.WARN, m.balance().missingCheck());
    assertEquals(20, m.balance().checkEvery());
    assertEquals(7, m.sample().holdingDays());
    assertEquals(20, m.sample().batchSize());
    assertEquals(10, m.sample().slowMinutes());
    assertEquals(0.1, m.uncertainty().massMg());
    assertEquals(0.95, m.uncertainty().probability());
    assertNull(m.uncertainty().k());
    assertEquals(3, m.report().digits());
    assertEquals(10, m.duplicates().everySamples());
    assertNull(m.ignition());
  }

  // The editions differ: to the 22nd the lesser of 4 % and 0.5 mg, from the 23rd 0.5 mg (both from
  // memory); EPA 160.2 speaks of a loss.
  @Test
  void the_presets_follow_their_editions() {
    List<Mass> pair = List.of(Mass.ofMilligrams("105"), Mass.ofMilligrams("104.7"));
    Mass pre = Mass.ofMilligrams("100");
    Mass step = Mass.ofMilligrams("0.1");
    for (String key : List.of("sm-2540d-21", "sm-2540d-22")) {
      Constancy c = Methods.presets().get(key).constancy();
      assertEquals(ConstantVerdict.Kind.DRY_AGAIN, c.judgePost(pair, pre, step).kind(), key);
    }
    for (String key : List.of("sm-2540d-23", "sm-2540d-24", "epa-160.2", "iso-11923", "en-872")) {
      Constancy c = Methods.presets().get(key).constancy();
      assertTrue(c.judgePost(pair, pre, step).isConstant(), key);
    }
    ConstantRule epa = Methods.presets().get("epa-160.2").constancy().postRule();
    assertNotNull(epa);
    assertEquals(ConstantRule.Direction.LOSS, epa.direction());
    assertEquals(Mass.ofMilligrams("1"), Methods.presets().get("epa-160.2").residue().min());
    assertEquals(0.017, Methods.presets().get("iso-11923").blank().lossMgPerCm2());
    assertTrue(Methods.presets().get("iso-11923").drying().celsius().contains(107));
    assertEquals(Taken.WHOLE, Methods.presets().get("astm-d3977-b").taken());
    Ignition ignition = Methods.presets().get("sm-2540e-22").ignition();
    assertNotNull(ignition);
    assertTrue(ignition.celsius().contains(550));
  }

  @Test
  void pre_weighings_are_judged_by_their_own_rule_and_the_filter_is_the_base() {
    Constancy c = Method.parse(with("preconstant_pct", "0.1")).constancy();
    List<Mass> pair = List.of(Mass.ofMilligrams("100"), Mass.ofMilligrams("99.8"));
    Mass step = Mass.ofMilligrams("0.1");
    assertEquals(Mass.ofMilligrams("0.1"), c.judgePre(pair, step).limit());
    assertFalse(c.judgePre(pair, step).isConstant());
    assertEquals(ConstantVerdict.Kind.UNKNOWN, c.judgePre(pair, Mass.ofMilligrams("1")).kind());
    Constancy none = Method.parse(with("preconstant_mg", "none")).constancy();
    assertNull(none.preRule());
    assertEquals(ConstantVerdict.Kind.NOT_TESTED, none.judgePre(pair, step).kind());
  }

  @Test
  void after_too_many_dryings_a_person_decides() {
    Constancy c = Method.parse(TEXT).constancy();
    Mass pre = Mass.ofMilligrams("100");
    ConstantVerdict wet =
        c.judgePost(List.of(Mass.ofMilligrams("130"), Mass.ofMilligrams("120")), pre, null);
    assertFalse(c.needsDecision(wet, 4));
    assertTrue(c.needsDecision(wet, 5));
    ConstantVerdict dry =
        c.judgePost(List.of(Mass.ofMilligrams("130"), Mass.ofMilligrams("130")), pre, null);
    assertFalse(c.needsDecision(dry, 9));
  }

  @Test
  void comments_blank_lines_and_the_order_of_lines_do_not_matter() {
    List<String> lines = TEXT.lines().sorted().map(l -> "  " + l + "   # why not").toList();
    String text = "\uFEFF# first\r\n\r\n" + String.join("\r\n", lines);
    assertEquals(TEXT, Method.parse(text).text());
    assertEquals(TEXT, Method.parse("\uFEFF" + TEXT).text());
    assertEquals("a#b", Method.parse(with("title", "a#b # not this")).title());
  }

  @Test
  void a_fault_says_line_key_expectation_and_what_was_there() {
    MethodFault fault = fault("report_digits", "ten");
    assertEquals(
        "line "
            + fault.line()
            + ", report_digits: found \"ten\", expected a whole number from 1 to 9",
        fault.toString());
    MethodFault missing = faults(TEXT.replaceFirst("(?m)^taken = .*\n", "")).get(0);
    assertEquals("taken: missing, expected one of aliquot, whole", missing.toString());
    assertEquals(0, missing.line());
    assertTrue(fault("u_mass_mg", "x").expected().contains("0 to 100000 (mg)"));
    assertTrue(fault("blank_limit_mg", "x").expected().endsWith(", or none"));
  }

  @Test
  void all_faults_are_told_at_once_in_the_order_of_lines() {
    String text =
        "nonsense\n"
            + with("report_digits", "0").replaceFirst("(?m)^taken = .*\n", "")
            + "colour = red\nkey = again\ntitle =\n";
    List<MethodFault> faults = faults(text);
    assertEquals(
        List.of("(no key)", "report_digits", "colour", "key", "title", "taken"),
        faults.stream().map(MethodFault::key).toList());
    assertTrue(faults.get(2).expected().contains("near: "), faults.get(2).toString());
    MethodException e = assertThrows(MethodException.class, () -> Method.parse(text));
    assertEquals(6, e.getMessage().lines().count());
  }

  @Test
  void an_unknown_key_names_the_nearest_known_ones() {
    MethodFault fault = faults(TEXT + "u_mas_mg = 1\n").get(0);
    assertTrue(fault.expected().contains("u_mass_mg"), fault.expected());
  }

  @Test
  void an_empty_value_is_one_fault_not_two() {
    List<MethodFault> faults = faults(with("standard", ""));
    assertEquals(1, faults.size(), faults.toString());
  }

  @Test
  void a_range_is_two_numbers_in_order() {
    assertEquals(
        new Span(50, 60), Method.parse(with("dry_celsius", "50 to 60")).drying().celsius());
    for (String wrong :
        List.of("105", "105 to 103", "103-105", "10 to 60", "50 to 301", "a to b")) {
      assertEquals("dry_celsius", fault("dry_celsius", wrong).key(), wrong);
    }
    Span span = new Span(103, 105);
    assertTrue(span.contains(103) && span.contains(105));
    assertFalse(span.contains(102.99) || span.contains(105.01) || span.contains(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Span(2, 1));
    assertThrows(IllegalArgumentException.class, () -> new Span(Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> new Span(Double.NEGATIVE_INFINITY, 1));
    assertThrows(IllegalArgumentException.class, () -> new Span(1, Double.POSITIVE_INFINITY));
  }

  @Test
  void numbers_that_do_not_fit_together_are_faults() {
    assertEquals("residue_max_mg", fault("residue_max_mg", "2.4").key());
    assertEquals("coverage_k", fault("coverage_k", "2").key());
    assertEquals("coverage_k", fault("coverage_probability_pct", "none").key());
    assertEquals("ignite_min", fault("ignite_celsius", "500 to 600").key());
    assertEquals("ignite_min", fault("ignite_min", "15").key());
    String k =
        with("coverage_probability_pct", "none").replace("coverage_k = none", "coverage_k = 2");
    assertEquals(2.0, Method.parse(k).uncertainty().k());
    assertEquals(Method.parse(k), Method.parse(Method.parse(k).text()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new UncertaintyInputs(0, 1, 0, 0, 0, 0, 0, 0, null, null));
    assertThrows(
        IllegalArgumentException.class,
        () -> new UncertaintyInputs(0, 1, 0, 0, 0, 0, 0, 0, 0.95, 2.0));
    Mass one = Mass.ofMilligrams("1");
    assertThrows(IllegalArgumentException.class, () -> new ResidueRule(one, Mass.ZERO, Mass.ZERO));
    assertThrows(IllegalArgumentException.class, () -> new ResidueRule(Mass.ZERO, one, one));
    assertThrows(
        IllegalArgumentException.class, () -> new ResidueRule(one.negate(), one, Mass.ZERO));
  }

  @Test
  void the_probability_is_written_as_it_was_read() {
    for (String percent : List.of("95", "95.45", "99.9", "68.27", "90")) {
      String text = Method.parse(with("coverage_probability_pct", percent)).text();
      assertTrue(text.contains("coverage_probability_pct = " + percent + "\n"), text);
    }
    assertEquals("0", Numbers.plain(-0.0));
    assertEquals("inf", Numbers.plain(Double.POSITIVE_INFINITY));
    assertEquals("0.00001", Numbers.plain(1e-5));
    assertEquals("120000000", Numbers.plain(1.2e8));
    assertThrows(IllegalArgumentException.class, () -> Numbers.decimal("1".repeat(31)));
    assertEquals(30, Numbers.decimal("1".repeat(30)).precision());
  }

  @Test
  void the_reporting_limit_follows_the_volume_down_to_its_floor() {
    ReportRule rule = new ReportRule(3, Mass.ofMilligrams("2.5"), 4);
    assertEquals(5, rule.limit(0.5), 1e-12);
    assertEquals(4, rule.limit(1), 1e-12);
    assertEquals(4, new ReportRule(3, null, 4).limit(0.01), 1e-12);
  }

  @Test
  void duplicates_near_the_limit_are_compared_by_their_difference() {
    DuplicateTerms terms = new DuplicateTerms(10, 5.0, 5);
    assertNull(new DuplicateTerms(10, null, 5).rule(2));
    assertNotNull(terms.rule(2));
    assertTrue(terms.rule(2).judge(new DuplicatePair(8, 10)).agrees());
    assertFalse(terms.rule(2).judge(new DuplicatePair(7.9, 10)).agrees());
    assertTrue(terms.rule(2).judge(new DuplicatePair(97.6, 102.4)).agrees());
    assertFalse(terms.rule(2).judge(new DuplicatePair(97.4, 102.6)).agrees());
  }

  @Test
  void near_names_are_counted_in_single_edits() {
    assertEquals(0, NearNames.distance("abc", "abc"));
    assertEquals(3, NearNames.distance("", "abc"));
    assertEquals(3, NearNames.distance("abc", ""));
    // The textbook pair.
    assertEquals(3, NearNames.distance("kitten", "sitting"));
    assertEquals(2, NearNames.distance("ab", "ba"));
    assertEquals(List.of("b", "a"), NearNames.of("B", List.of("a", "b", "c"), 2));
  }
}
