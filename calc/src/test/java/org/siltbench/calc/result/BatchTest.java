package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.blank.BlankKind;
import org.siltbench.calc.duplicates.DuplicateRule;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;

final class BatchTest {

  private static final String HEADER =
      "filter,role,sample,pair,pair_kind,pre_g,post_g,volume_ml,taken";

  @Test
  void a_clean_sample_has_no_flags_and_the_report_counts_it() {
    Tables.Outcome out =
        Tables.calculate(Tables.plain(), HEADER, "F1,sample,,,,0.1000,0.1500,500,aliquot");
    ResultRow row = out.row("F1");
    assertEquals(Set.of(), row.flags());
    assertEquals(Mass.ofMilligrams("50"), row.residue());
    assertEquals(Mass.ofMilligrams("150"), row.counted());
    assertEquals(0, row.blankMg());
    assertEquals(5, row.limitMgPerL(), 1e-12);
    assertEquals("unknown", row.constantWord());
    assertFalse(row.isStopped());
    assertEquals(100, out.concentration("F1").mgPerL(), 1e-12);
    assertEquals(1, out.report().rows());
    assertEquals(1, out.report().samples());
    assertEquals(Set.of(), out.report().flags());
    assertEquals(List.of(), out.report().pairs());
  }

  @Test
  void no_rows_give_no_results_and_an_empty_report() {
    Tables.Outcome out = Tables.calculate(Tables.method("sm-2540d-23"), HEADER);
    assertEquals(0, out.report().rows());
    assertEquals(Set.of(), out.report().flags());
  }

  @Test
  void a_negative_residue_is_kept_with_its_sign_flagged_and_below_the_limit() {
    Tables.Outcome out =
        Tables.calculate(Tables.plain(), HEADER, "F1,sample,,,,0.1000,0.0998,500,");
    assertEquals(-0.4, out.concentration("F1").mgPerL(), 1e-12);
    assertEquals(Set.of(Flag.NEGATIVE, Flag.BELOW_LIMIT, Flag.RESIDUE_LOW), out.row("F1").flags());
    assertFalse(out.row("F1").isStopped());
  }

  @Test
  void only_beyond_the_method_s_limit_a_negative_residue_stops() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain(),
            HEADER,
            "F1,sample,,,,0.1000,0.0990,500,",
            "F2,sample,,,,0.1000,0.0989999,500,",
            "B1,method-blank,,,,0.1000,0.0980,500,");
    assertFalse(out.row("F1").isStopped());
    assertTrue(out.row("F2").isStopped());
    assertTrue(out.row("F2").flags().contains(Flag.NEGATIVE_BEYOND_LIMIT));
    assertTrue(out.row("B1").flags().contains(Flag.NEGATIVE_BEYOND_LIMIT));
    assertTrue(out.row("B1").isStopped());
  }

  @Test
  void a_residue_of_zero_is_below_the_limit_and_not_negative() {
    Tables.Outcome out =
        Tables.calculate(Tables.plain(), HEADER, "F1,sample,,,,0.1000,0.1000,500,");
    assertEquals(0, out.concentration("F1").mgPerL());
    assertEquals(Set.of(Flag.BELOW_LIMIT, Flag.RESIDUE_LOW), out.row("F1").flags());
    assertEquals(Math.sqrt(0.02) / 0.5, out.concentration("F1").u(), 1e-12);
  }

  @Test
  void the_residue_range_of_the_method_is_closed() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain(),
            HEADER,
            "F1,sample,,,,0.1000,0.1025,1000,",
            "F2,sample,,,,0.1000,0.1024999,1000,",
            "F3,reference,,,,0.1000,0.3000,1000,",
            "F4,reference,,,,0.1000,0.3000001,1000,",
            "C1,control,,,,0.1000,0.1000,,");
    assertEquals(Set.of(), out.row("F1").flags());
    assertEquals(Set.of(Flag.RESIDUE_LOW, Flag.BELOW_LIMIT), out.row("F2").flags());
    assertEquals(Set.of(), out.row("F3").flags());
    assertEquals(Set.of(Flag.RESIDUE_HIGH), out.row("F4").flags());
    assertEquals(Set.of(), out.row("C1").flags());
    assertEquals(4 - 2, out.report().samples());
  }

  @Test
  void without_a_volume_there_is_a_residue_and_no_concentration() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain(),
            HEADER,
            "F1,sample,,,,0.1000,0.1500,,",
            "T1,trip-blank,,,,0.1000,0.1000,0,",
            "T2,trip-blank,,,,0.1000,0.1000,,");
    assertNull(out.row("F1").concentration());
    assertTrue(Double.isNaN(out.row("F1").limitMgPerL()));
    assertEquals(Set.of(Flag.NO_VOLUME), out.row("F1").flags());
    assertNull(out.row("T1").concentration());
    assertEquals(Set.of(), out.row("T1").flags());
    assertEquals(Set.of(), out.row("T2").flags());
  }

  // (112.34 -> 128.91 mg, 0.5 L) less a mean blank of 0.157 mg with s 0.17182 over 7 (the blanks of
  // the
  // 40 CFR 136 example); by hand.
  @Test
  void the_mean_blank_is_subtracted_where_the_method_says_so() {
    Method subtract = Tables.plain("blank_use = subtract", "u_mass_mg = 0.01");
    String[] lines = {
      HEADER,
      "F1,sample,,,,0.11234,0.12891,500,",
      "B1,method-blank,,,,0.1000,0.1002,500,",
      "B2,method-blank,,,,0.1000,0.0999,500,",
      "B3,method-blank,,,,0.1000,0.1003,500,",
      "B4,method-blank,,,,0.1000,0.1001,500,",
      "B5,method-blank,,,,0.1000,0.1000,500,",
      "B6,method-blank,,,,0.1000,0.1002,500,",
      "B7,method-blank,,,,0.1000,0.1004,500,",
      "X1,field-blank,,,,0.1000,0.1090,500,"
    };
    Tables.Outcome out = Tables.calculate(subtract, lines);
    double mean = 1.1 / 7;
    double ub = 0.171825 / Math.sqrt(7);
    double display = 0.1 / Math.sqrt(12);
    Concentration c = out.concentration("F1");
    assertEquals((16.57 - mean) / 0.5, c.mgPerL(), 1e-9);
    // Displayed to 0.01 mg: u_mass of 0.01 mg is larger than 0.01/sqrt(12).
    assertEquals(Math.sqrt(2 * 0.01 * 0.01 + ub * ub) / 0.5, c.u(), 1e-6);
    assertTrue(c.dof() > 6 && c.dof() < 7.2, "dof " + c.dof());
    assertEquals(mean, out.row("F1").blankMg(), 1e-12);
    assertTrue(out.row("F1").flags().contains(Flag.BLANK_SUBTRACTED));
    assertEquals(0, out.row("B1").blankMg());
    assertEquals(0.4, out.concentration("B1").mgPerL(), 1e-9);
    assertEquals(Math.sqrt(2) * display / 0.5, out.concentration("B1").u(), 1e-9);
    assertFalse(out.row("B1").flags().contains(Flag.BLANK_SUBTRACTED));
    assertEquals(7, out.report().correction().blanks());
    assertEquals(1, out.report().blanks().count(BlankKind.FIELD));
    Tables.Outcome control = Tables.calculate(Tables.plain(), lines);
    assertEquals(33.14, control.concentration("F1").mgPerL(), 1e-9);
    assertFalse(control.row("F1").flags().contains(Flag.BLANK_SUBTRACTED));
  }

  @Test
  void a_method_that_subtracts_without_blanks_says_that_nothing_was_subtracted() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain("blank_use = subtract", "blank_min_count = 1", "u_blank_mg = 0.3"),
            HEADER,
            "F1,sample,,,,0.1000,0.1500,500,",
            "C1,control,,,,0.1000,0.1000,,");
    assertTrue(out.row("F1").flags().contains(Flag.BLANK_MISSING));
    assertFalse(out.row("F1").flags().contains(Flag.BLANK_SUBTRACTED));
    assertFalse(out.row("C1").flags().contains(Flag.BLANK_MISSING));
    assertEquals(0, out.row("F1").blankMg());
    assertEquals(Math.sqrt(0.02 + 0.09) / 0.5, out.concentration("F1").u(), 1e-9);
    assertEquals(Set.of(Flag.NO_BLANKS), out.report().flags());
  }

  @Test
  void too_few_blanks_and_blanks_out_of_limits_are_seen_in_the_batch() {
    Method two = Tables.plain("blank_min_count = 2", "blank_limit_mg = 0.5");
    Tables.Outcome out =
        Tables.calculate(
            two,
            HEADER,
            "F1,sample,,,,0.1000,0.1500,500,",
            "B1,method-blank,,,,0.1000,0.1005,500,",
            "X1,field-blank,,,,0.1000,0.1001,500,");
    assertEquals(Set.of(Flag.FEW_BLANKS, Flag.BLANKS_HIGH), out.report().flags());
    assertTrue(out.row("B1").flags().contains(Flag.BLANK_HIGH));
    assertFalse(out.row("X1").flags().contains(Flag.BLANK_HIGH));
    // 0.13 mg in 50 mL is 2.6 mg/L: beyond 2.5 mg/L although below 0.5 mg.
    Tables.Outcome dense =
        Tables.calculate(
            two,
            HEADER,
            "F1,sample,,,,0.1000,0.1500,500,",
            "B1,method-blank,,,,0.10000,0.10013,50,",
            "B2,method-blank,,,,0.10000,0.10010,50,");
    assertTrue(dense.row("B1").flags().contains(Flag.BLANK_HIGH));
    assertFalse(dense.row("B2").flags().contains(Flag.BLANK_HIGH));
    assertEquals(Set.of(Flag.BLANKS_HIGH), dense.report().flags());
  }

  @Test
  void successive_post_weighings_are_judged_and_the_word_is_yes_no_or_unknown() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain(),
            "filter,role,pre_g,post1_g,post2_g,post3_g,volume_ml",
            "F1,sample,0.1000,0.1510,0.1500,0.1499,500",
            "F2,sample,0.1000,0.1510,0.1500,,500",
            "F3,sample,0.1000,0.1510,,,500",
            "F4,sample,0.100,0.151,0.151,,500");
    assertEquals("yes", out.row("F1").constantWord());
    assertEquals(99.8, out.concentration("F1").mgPerL(), 1e-9);
    assertEquals(Set.of(), out.row("F1").flags());
    assertEquals("no", out.row("F2").constantWord());
    assertEquals(Set.of(Flag.NOT_CONSTANT), out.row("F2").flags());
    assertEquals("unknown", out.row("F3").constantWord());
    assertEquals(Set.of(Flag.NOT_TESTED), out.row("F3").flags());
    assertEquals("unknown", out.row("F4").constantWord());
    assertEquals(Set.of(Flag.CONSTANT_UNKNOWN, Flag.COARSE_BALANCE), out.row("F4").flags());
  }

  @Test
  void a_method_without_a_rule_does_not_complain_of_one_weighing() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain("constant_mg = none"),
            "filter,role,pre_g,post1_g,volume_ml",
            "F1,sample,0.1000,0.1510,500");
    assertEquals(Set.of(), out.row("F1").flags());
  }

  @Test
  void the_mean_of_two_weighings_is_better_known_than_one() {
    String header = "filter,role,pre_g,post1_g,post2_g,volume_ml";
    String line = "F1,sample,0.1000,0.1502,0.1500,500";
    Tables.Outcome mean =
        Tables.calculate(Tables.plain("counting_mass = mean-of-pair"), header, line);
    assertEquals(100.2, mean.concentration("F1").mgPerL(), 1e-9);
    assertEquals(Math.sqrt(0.01 + 0.005) / 0.5, mean.concentration("F1").u(), 1e-9);
    Tables.Outcome one =
        Tables.calculate(
            Tables.plain("counting_mass = mean-of-pair"), header, "F1,sample,0.1000,0.1502,,500");
    assertEquals(Math.sqrt(0.02) / 0.5, one.concentration("F1").u(), 1e-9);
    Tables.Outcome lowest =
        Tables.calculate(
            Tables.plain("counting_mass = lowest"), header, "F1,sample,0.1000,0.1500,0.1502,500");
    assertEquals(100.0, lowest.concentration("F1").mgPerL(), 1e-9);
    assertEquals(Math.sqrt(0.02) / 0.5, lowest.concentration("F1").u(), 1e-9);
  }

  @Test
  void a_display_coarser_than_the_method_s_figure_counts_instead() {
    Tables.Outcome out = Tables.calculate(Tables.plain(), HEADER, "F1,sample,,,,0.100,0.150,500,");
    assertEquals(Math.sqrt(2) * (1 / Math.sqrt(12)) / 0.5, out.concentration("F1").u(), 1e-9);
    assertEquals(Set.of(Flag.COARSE_BALANCE), out.row("F1").flags());
  }

  @Test
  void one_sample_over_two_filters_is_summed_and_both_rows_say_so() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain("blank_use = subtract"),
            HEADER,
            "F1,sample,S1,,,0.1000,0.1500,300,aliquot",
            "F2,sample,S2,,,0.1000,0.1100,300,aliquot",
            "F3,sample,S1,,,0.1000,0.1200,100,aliquot",
            "B1,method-blank,S1,,,0.1000,0.1001,300,");
    // (50 + 20 - 2*0.1)/0.4
    assertEquals(69.8 / 0.4, out.concentration("F1").mgPerL(), 1e-9);
    assertEquals(out.concentration("F1").mgPerL(), out.concentration("F3").mgPerL());
    assertEquals(Mass.ofMilligrams("20"), out.row("F3").residue());
    // Weighings are independent, the blank is shared: 4*0.01 + (2*0.1*sqrt2)^2.
    assertEquals(Math.sqrt(4 * 0.01 + 4 * 0.02) / 0.4, out.concentration("F1").u(), 1e-9);
    assertTrue(out.row("F1").flags().contains(Flag.SEVERAL_FILTERS));
    assertTrue(out.row("F3").flags().contains(Flag.SEVERAL_FILTERS));
    assertFalse(out.row("F2").flags().contains(Flag.SEVERAL_FILTERS));
    assertFalse(out.row("B1").flags().contains(Flag.SEVERAL_FILTERS));
    assertEquals(9.9 / 0.3, out.concentration("F2").mgPerL(), 1e-9);
  }

  @Test
  void a_missing_volume_on_one_filter_leaves_the_whole_sample_without_concentration() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain(),
            HEADER,
            "F1,sample,S1,,,0.1000,0.1500,300,",
            "F2,sample,S1,,,0.1000,0.1200,,");
    assertNull(out.row("F1").concentration());
    assertTrue(out.row("F1").flags().contains(Flag.NO_VOLUME));
    assertTrue(out.row("F2").flags().contains(Flag.NO_VOLUME));
  }

  @Test
  void aliquot_and_whole_bottle_are_never_pooled() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain("duplicate_limit_pct = 5"),
            HEADER,
            "F1,sample,S1,,,0.1000,0.1500,300,aliquot",
            "F2,sample,S1,,,0.1000,0.1200,100,whole",
            "F3,sample,,P1,bottle-split,0.1000,0.1200,100,whole",
            "F4,sample,,P1,bottle-split,0.1000,0.1200,100,aliquot",
            "F5,sample,S5,P2,bottle-split,0.1000,0.1200,100,whole",
            "F6,sample,S5,P2,bottle-split,0.1000,0.1200,100,aliquot",
            "F7,sample,,P2,bottle-split,0.1000,0.1200,100,aliquot");
    assertNull(out.row("F1").concentration());
    assertTrue(out.row("F1").flags().contains(Flag.TAKEN_MIXED));
    assertTrue(out.row("F2").isStopped());
    assertTrue(out.row("F2").flags().contains(Flag.WHOLE_DEPARTURE));
    assertFalse(out.row("F1").flags().contains(Flag.WHOLE_DEPARTURE));
    assertFalse(out.row("F1").flags().contains(Flag.ALIQUOT_DEPARTURE));
    assertTrue(out.row("F3").flags().contains(Flag.PAIR_MIXED));
    assertTrue(out.row("F4").flags().contains(Flag.PAIR_MIXED));
    assertTrue(out.row("F7").flags().contains(Flag.PAIR_MIXED));
    assertNull(out.report().pairs().get(0).verdict());
    Tables.Outcome whole =
        Tables.calculate(
            Tables.method("astm-d3977-b"), HEADER, "F1,sample,,,,0.1000,0.1500,300,aliquot");
    assertTrue(whole.row("F1").flags().contains(Flag.ALIQUOT_DEPARTURE));
    assertFalse(whole.row("F1").flags().contains(Flag.WHOLE_DEPARTURE));
  }

  // RPD of (101, 95) is 6.12 %, of (12.0, 12.6) 4.88 % (check values A7, recomputed).
  @Test
  void duplicates_are_compared_under_the_method_s_limit() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain("duplicate_limit_pct = 5", "duplicate_every = 2"),
            HEADER,
            "F1,sample,,P1,field-replicate,0.1000,0.2010,1000,",
            "F2,sample,,P2,re-weigh,0.1000,0.1120,1000,",
            "F3,sample,,P1,field-replicate,0.1000,0.1950,1000,",
            "F4,sample,,P2,re-weigh,0.1000,0.1126,1000,",
            "F5,sample,,P3,,0.1000,0.1126,1000,",
            "F6,sample,,,,0.1000,0.1126,1000,");
    List<PairVerdict> pairs = out.report().pairs();
    assertEquals(List.of("P1", "P2", "P3"), pairs.stream().map(PairVerdict::pair).toList());
    DuplicateRule.Verdict first = pairs.get(0).verdict();
    assertNotNull(first);
    assertEquals(6.12, first.value(), 0.005);
    assertEquals("field-replicate", pairs.get(0).kind());
    assertEquals(Flag.DUPLICATE_APART, pairs.get(0).flag());
    assertEquals(101, pairs.get(0).first(), 1e-9);
    assertEquals(95, pairs.get(0).second(), 1e-9);
    // A mean of 12.3 mg/L is under 5 limits of 2.5 mg/L: the difference 0.6 is compared with 2.5.
    DuplicateRule.Verdict second = pairs.get(1).verdict();
    assertNotNull(second);
    assertEquals(DuplicateRule.Basis.DIFFERENCE, second.basis());
    assertNull(pairs.get(1).flag());
    assertEquals(Flag.PAIR_INCOMPLETE, pairs.get(2).flag());
    assertTrue(out.row("F1").flags().contains(Flag.DUPLICATE_APART));
    assertTrue(out.row("F3").flags().contains(Flag.DUPLICATE_APART));
    assertEquals(Set.of(), out.row("F2").flags());
    assertEquals(Set.of(Flag.PAIR_INCOMPLETE), out.row("F5").flags());
    assertEquals(Set.of(), out.row("F6").flags());
    // Six samples, one pair per two: three wanted, two compared.
    assertEquals(Set.of(Flag.FEW_DUPLICATES, Flag.DUPLICATES_APART), out.report().flags());
  }

  @Test
  void enough_pairs_are_not_complained_of() {
    String[] lines = {
      HEADER,
      "F1,sample,,P1,,0.1000,0.2000,1000,",
      "F2,sample,,P1,,0.1000,0.2001,1000,",
      "F3,sample,,,,0.1000,0.2001,1000,"
    };
    assertEquals(
        Set.of(), Tables.calculate(Tables.plain("duplicate_every = 3"), lines).report().flags());
    assertEquals(
        Set.of(Flag.FEW_DUPLICATES),
        Tables.calculate(Tables.plain("duplicate_every = 2"), lines).report().flags());
  }

  @Test
  void three_of_one_pair_are_not_compared_and_two_filters_of_one_sample_are_one_member() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain("duplicate_limit_pct = 5"),
            HEADER,
            "F1,sample,,P1,,0.1000,0.2000,1000,",
            "F2,sample,,P1,,0.1000,0.2000,1000,",
            "F3,sample,,P1,,0.1000,0.2000,1000,",
            "G1,sample,S,P2,,0.1000,0.1600,600,",
            "G2,sample,,P2,,0.1000,0.2010,1000,",
            "G3,sample,S,P2,,0.1000,0.1400,400,",
            "H1,sample,,P3,,0.1000,0.2000,1000,",
            "H2,sample,,P3,,0.1000,0.2000,,");
    assertTrue(out.row("F1").flags().contains(Flag.PAIR_CROWDED));
    assertNull(out.report().pairs().get(0).verdict());
    PairVerdict second = out.report().pairs().get(1);
    assertEquals(100, second.first(), 1e-9);
    assertEquals(101, second.second(), 1e-9);
    assertNull(second.flag());
    assertEquals(Flag.PAIR_INCOMPLETE, out.report().pairs().get(2).flag());
    assertTrue(out.row("H1").flags().contains(Flag.PAIR_INCOMPLETE));
  }

  @Test
  void a_method_without_a_limit_compares_nothing() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain("duplicate_limit_pct = none"),
            HEADER,
            "F1,sample,,P1,,0.1000,0.2000,1000,",
            "F2,sample,,P1,,0.1000,0.3000,1000,");
    assertNull(out.report().pairs().get(0).verdict());
    assertNull(out.report().pairs().get(0).flag());
  }

  @Test
  void flags_seen_before_are_passed_on() {
    InputRow row =
        InputRow.of("F1", RowRole.SAMPLE)
            .pre(Mass.ofMilligrams("100"))
            .post(Mass.ofMilligrams("150"))
            .seen(Set.of(Flag.TORN, Flag.KEYED))
            .build();
    Tables.Outcome out = Tables.calculate(Tables.plain(), List.of(row));
    assertEquals(Set.of(Flag.TORN, Flag.KEYED, Flag.NO_VOLUME), out.row("F1").flags());
    assertEquals("no-volume;torn;keyed", Flag.join(out.row("F1").flags()));
  }
}
