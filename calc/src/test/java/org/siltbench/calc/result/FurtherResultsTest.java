package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;

/** Ignition, sand and fines, recovery, high concentrations: expected values worked out by hand. */
final class FurtherResultsTest {

  private static Further further(Tables.Outcome outcome, String filter) {
    Further further = outcome.row(filter).further();
    if (further == null) {
      throw new AssertionError("nothing further for " + filter);
    }
    return further;
  }

  /**
   * SM 2540 E, with the blank's own loss taken off: dried − before = 20.0 mg, dried − ignited = 6.0
   * mg, the blanks lost 0.4 and 0.6 mg: volatile 5.5 mg, fixed 14.5 mg in 0.5 L.
   */
  @Test
  void ignition_parts_the_residue_with_its_own_blank() {
    Method method = Tables.plain("blank_min_count = 1");
    Tables.Outcome outcome =
        Tables.calculate(
            method,
            "filter,role,pre_g,post_g,ignited_g,volume_ml,volume_u_ml,material,muffled_c",
            "F,sample,0.1000,0.1200,0.1140,500,0,glass-fibre,550",
            "B1,method-blank,0.1000,0.1000,0.0996,,,glass-fibre,550",
            "B2,method-blank,0.1000,0.1000,0.0994,,,glass-fibre,550");
    Ignited ignited = further(outcome, "F").ignited();
    assertEquals(11.0, ignited.volatileMgPerL(), 1e-9);
    assertEquals(29.0, ignited.fixedMgPerL(), 1e-9);
    assertEquals(5.5, ignited.masses().volatileSolids(), 1e-9);
    // u(volatile): two weighings of 0.1 mg, and the blanks': s/√2 = 0.1 mg, weighing 0.1·√2/√2.
    double u = Math.sqrt(2 * 0.01 + 0.01) / 0.5;
    assertEquals(u, ignited.volatileU(), 1e-9);
    assertFalse(outcome.row("F").flags().contains(Flag.NO_IGNITION_BLANK));
    assertFalse(outcome.row("F").flags().contains(Flag.MUFFLING_UNKNOWN));
  }

  @Test
  void ignition_without_a_blank_or_a_word_on_the_filter_is_flagged() {
    Tables.Outcome outcome =
        Tables.calculate(
            Tables.plain(),
            "filter,role,pre_g,post_g,ignited_g,volume_ml",
            "F,sample,0.1000,0.1200,0.1140,500");
    assertEquals(12.0, further(outcome, "F").ignited().volatileMgPerL(), 1e-9);
    assertTrue(outcome.row("F").flags().contains(Flag.NO_IGNITION_BLANK));
    assertTrue(outcome.row("F").flags().contains(Flag.MUFFLING_UNKNOWN));
  }

  @ParameterizedTest
  @CsvSource({
    "cellulose,550,material",
    "membrane,550,material",
    "bound-glass-fibre,,material",
    "glass-fibre,0,muffled_c",
    "quartz-fibre,499,muffled_c",
  })
  void what_burns_or_was_not_muffled_is_refused(String material, String celsius, String column) {
    InputFaults no =
        assertThrows(
            InputFaults.class,
            () ->
                Tables.calculate(
                    Tables.plain(),
                    "filter,role,pre_g,post_g,ignited_g,volume_ml,material,muffled_c",
                    "F,sample,0.1000,0.1200,0.1140,500,"
                        + material
                        + ","
                        + (celsius == null ? "" : celsius)));
    assertEquals(column, no.faults().get(0).column());
  }

  @Test
  void five_hundred_degrees_is_hot_enough() {
    Tables.Outcome outcome =
        Tables.calculate(
            Tables.plain(),
            "filter,role,pre_g,post_g,ignited_g,volume_ml,material,muffled_c",
            "F,sample,0.1000,0.1200,0.1140,500,Quartz-Fibre,500");
    assertEquals(12.0, further(outcome, "F").ignited().volatileMgPerL(), 1e-9);
  }

  @Test
  void only_a_sample_whose_filters_were_all_ignited_is_parted() {
    Tables.Outcome outcome =
        Tables.calculate(
            Tables.plain(),
            "filter,role,sample,pre_g,post_g,ignited_g,volume_ml",
            "F1,sample,S,0.1000,0.1200,0.1140,500",
            "F2,sample,S,0.1000,0.1100,,250");
    assertNull(further(outcome, "F1").ignited());
    Tables.Outcome both =
        Tables.calculate(
            Tables.plain(),
            "filter,role,sample,pre_g,post_g,ignited_g,volume_ml,volume_u_ml",
            "F1,sample,S,0.1000,0.1200,0.1140,500,0",
            "F2,sample,S,0.1000,0.1100,0.1080,250,0");
    Ignited ignited = further(both, "F2").ignited();
    assertEquals(8 / 0.75, ignited.volatileMgPerL(), 1e-9);
    assertEquals(22 / 0.75, ignited.fixedMgPerL(), 1e-9);
    assertEquals(0.1 * Math.sqrt(2) * Math.sqrt(2) / 0.75, ignited.volatileU(), 1e-9);
  }

  /**
   * ASTM D3977 C: sand 12 mg on a filter, fines 30 mg on another, one litre; a mean blank of 1 mg
   * is taken off each filter, but not off a dish.
   */
  @Test
  void sand_and_fines_share_the_fines_water_and_the_blank() {
    Method method = Tables.plain("blank_use = subtract");
    String[] rows = {
      "filter,role,sample,part,pre_g,post_g,volume_ml,volume_u_ml",
      "F1,sample,S,sand,0.1000,0.1120,,",
      "F2,sample,S,fines,0.1000,0.1300,1000,10",
      "B1,method-blank,,,0.1000,0.1010,,",
      "B2,method-blank,,,0.1000,0.1010,,"
    };
    Tables.Outcome outcome = Tables.calculate(method, rows);
    var parts = further(outcome, "F1").sandAndFines();
    assertEquals(11, parts.sand(), 1e-9);
    assertEquals(29, parts.fines(), 1e-9);
    assertEquals(27.5, parts.sandPercent(), 1e-9);
    assertEquals(40, outcome.concentration("F2").mgPerL(), 1e-9);
    // Both ways to the uncertainty of the total agree: four weighings, the blank twice, the volume.
    double blank = 2 * 0.1 * Math.sqrt(2) / Math.sqrt(2);
    double byHand = Math.sqrt(4 * 0.01 + blank * blank + 0.4 * 0.4);
    assertEquals(byHand, parts.totalUncertainty(), 1e-9);
    assertEquals(byHand, outcome.concentration("F2").u(), 1e-9);
    rows[1] = "F1,sample,S,sand-in-dish,0.1000,0.1120,,";
    assertEquals(12, further(Tables.calculate(method, rows), "F1").sandAndFines().sand(), 1e-9);
    assertEquals(41, Tables.calculate(method, rows).concentration("F1").mgPerL(), 1e-9);
  }

  @Test
  void sand_with_a_volume_of_its_own_is_refused_and_sand_of_an_aliquot_flagged() {
    InputFaults no =
        assertThrows(
            InputFaults.class,
            () ->
                Tables.calculate(
                    Tables.plain(),
                    "filter,role,sample,part,pre_g,post_g,volume_ml",
                    "F1,sample,S,sand,0.1000,0.1120,500"));
    assertEquals("volume_ml", no.faults().get(0).column());
    Tables.Outcome aliquot =
        Tables.calculate(
            Tables.plain(),
            "filter,role,sample,part,taken,pre_g,post_g,volume_ml",
            "F1,sample,S,sand,aliquot,0.1000,0.1120,",
            "F2,sample,S,fines,aliquot,0.1000,0.1120,500");
    assertTrue(aliquot.row("F1").flags().contains(Flag.SAND_IN_ALIQUOT));
    assertFalse(aliquot.row("F2").flags().contains(Flag.SAND_IN_ALIQUOT));
  }

  /** R = 100·47.5/50 = 95 %; u² = (100·u(C)/50)² + (95·1/50)² (GUM 5.1.2). */
  @Test
  void a_reference_sample_tells_its_recovery() {
    Tables.Outcome outcome =
        Tables.calculate(
            Tables.plain("recovery_pct = 90 to 110"),
            "filter,role,pre_g,post_g,volume_ml,volume_u_ml,expected_mg_l,expected_u_mg_l",
            "R,reference,0.1000,0.1190,400,0,50,1",
            "L,reference,0.1000,0.1170,400,0,50,",
            "E,reference,0.1000,0.1180,400,0,50,");
    Recovery recovery = further(outcome, "R").recovery();
    assertEquals(95, recovery.percent(), 1e-9);
    double uc = 0.1 * Math.sqrt(2) / 0.4;
    assertEquals(Math.hypot(2 * uc, 1.9), recovery.u(), 1e-9);
    assertFalse(outcome.row("R").flags().contains(Flag.RECOVERY_OUT));
    assertEquals(85, further(outcome, "L").recovery().percent(), 1e-9);
    assertTrue(outcome.row("L").flags().contains(Flag.RECOVERY_OUT));
    assertEquals(90, further(outcome, "E").recovery().percent(), 1e-9);
    assertFalse(outcome.row("E").flags().contains(Flag.RECOVERY_OUT));
    assertTrue(outcome.report().flags().contains(Flag.RECOVERIES_OUT));
    Tables.Outcome within =
        Tables.calculate(
            Tables.plain("recovery_pct = 90 to 110"),
            "filter,role,pre_g,post_g,volume_ml,volume_u_ml,expected_mg_l,expected_u_mg_l",
            "R,reference,0.1000,0.1190,400,0,50,1");
    assertFalse(within.report().flags().contains(Flag.RECOVERIES_OUT));
  }

  /** 50 000 ppm is 51 606.62 mg/L (equation, G = 2.65): 50 g of sediment in 1000 g of mixture. */
  @Test
  void a_bottle_by_mass_gives_the_mixture_its_volume() {
    Tables.Outcome outcome =
        Tables.calculate(
            Tables.plain("volume_max_ml = 2000"),
            "filter,role,pre_g,post_g,mixture_g",
            "F,sample,10,60,1000");
    assertEquals(51606.62, outcome.concentration("F").mgPerL(), 0.01);
    assertEquals(50_000, further(outcome, "F").partsPerMillion(), 1e-6);
    assertTrue(outcome.row("F").flags().contains(Flag.VOLUME_BY_MASS));
  }

  /** 26.5 g of grains take 10 mL: 26 500 mg in 1 L of filtrate are 26 237.6 mg per litre. */
  @Test
  void the_grains_take_their_place_beside_the_filtrate() {
    Tables.Outcome outcome =
        Tables.calculate(
            Tables.plain(),
            "filter,role,pre_g,post_g,volume_ml,volume_of",
            "F,sample,10,36.5,1000,filtrate",
            "M,sample,10,36.5,1000,mixture",
            "N,sample,10,9.9999,1000,filtrate");
    assertEquals(26_500 / 1.01, outcome.concentration("F").mgPerL(), 1e-6);
    assertEquals(26_500, outcome.concentration("M").mgPerL(), 1e-6);
    assertEquals(-0.1, outcome.concentration("N").mgPerL(), 1e-9);
    assertTrue(outcome.row("F").flags().contains(Flag.SEDIMENT_VOLUME));
    assertFalse(outcome.row("M").flags().contains(Flag.SEDIMENT_VOLUME));
  }

  /** 400 mg/L in 25 mL that dried up: 10 mg of the 60 mg, a fifth of the sediment's 50 mg. */
  @Test
  void dissolved_solids_are_taken_off_where_the_method_asks() {
    String[] rows = {
      "filter,role,pre_g,post_g,volume_ml,volume_u_ml,dissolved_mg_l,dissolved_u_mg_l,dried_ml",
      "F,sample,0.1000,0.1600,1000,0,400,20,25"
    };
    Tables.Outcome asked = Tables.calculate(Tables.plain("dissolved_from_pct = 10"), rows);
    assertEquals(50, asked.concentration("F").mgPerL(), 1e-9);
    assertEquals(Math.sqrt(0.02 + 0.25), asked.concentration("F").u(), 1e-9);
    assertTrue(asked.row("F").flags().contains(Flag.DISSOLVED_SUBTRACTED));
    assertEquals(10, further(asked, "F").dissolvedMg(), 1e-9);
    Tables.Outcome exactly = Tables.calculate(Tables.plain("dissolved_from_pct = 20"), rows);
    assertEquals(50, exactly.concentration("F").mgPerL(), 1e-9);
    for (String from : List.of("20.1", "none")) {
      Tables.Outcome left = Tables.calculate(Tables.plain("dissolved_from_pct = " + from), rows);
      assertEquals(60, left.concentration("F").mgPerL(), 1e-9);
      assertTrue(left.row("F").flags().contains(Flag.DISSOLVED_LEFT));
      assertFalse(left.row("F").flags().contains(Flag.DISSOLVED_SUBTRACTED));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "part,silt",
    "material,wood",
    "muffled_c,hot",
    "expected_mg_l,-5",
    "volume_of,bottle",
    "mixture_g,1",
    "dissolved_mg_l,1e3",
    "ignited_g,x",
  })
  void a_bad_cell_of_the_few_is_named(String column, String cell) {
    InputFaults no =
        assertThrows(
            InputFaults.class,
            () ->
                Tables.calculate(
                    Tables.plain(),
                    "filter,role,pre_g,post_g," + column,
                    "F,sample,10,60," + cell));
    assertEquals(column, no.faults().get(0).column());
    assertEquals(2, no.faults().get(0).line());
  }

  @Test
  void a_mixture_beside_a_volume_is_refused() {
    assertThrows(
        InputFaults.class,
        () ->
            Tables.calculate(
                Tables.plain(),
                "filter,role,pre_g,post_g,mixture_g,volume_ml",
                "F,sample,10,20,500,490"));
  }

  /** Blanks of one day say nothing of another, and 21 samples are two analytical batches. */
  @Test
  void blanks_are_counted_by_day() {
    Method method = Tables.plain("blank_min_count = 1", "batch_size = 20");
    List<String> lines = new ArrayList<>(List.of("filter,role,analysed,pre_g,post_g,volume_ml"));
    for (int i = 0; i < 21; i++) {
      lines.add("F" + i + ",sample,2026-05-14,0.1,0.12,500");
    }
    lines.add("B1,method-blank,2026-05-14,0.1,0.1,500");
    lines.add("G1,sample,2026-05-15,0.1,0.12,500");
    lines.add("B2,method-blank,2026-05-16,0.1,0.1,500");
    BatchReport report = Tables.calculate(method, lines.toArray(String[]::new)).report();
    assertEquals(
        List.of(
            new AnalyticalDays.Day("2026-05-14", 21, 1, 2),
            new AnalyticalDays.Day("2026-05-15", 1, 0, 1),
            new AnalyticalDays.Day("2026-05-16", 0, 1, 0)),
        report.days());
    assertTrue(report.flags().contains(Flag.FEW_BLANKS));
    assertTrue(report.flags().contains(Flag.NO_BLANKS));
  }

  @Test
  void blanks_analysed_elsewhere_on_the_same_day_count() {
    Method method = Tables.plain("blank_min_count = 1");
    AnalyticalDays elsewhere = new AnalyticalDays();
    elsewhere.add("2026-05-14", 3, 1);
    elsewhere.add("2026-05-20", 9, 0);
    List<InputRow> rows =
        Tables.rows(
            "filter,role,analysed,pre_g,post_g,volume_ml", "F,sample,2026-05-14,0.1,0.12,500");
    BatchReport report =
        new BatchCalculation(method, null, elsewhere).run(rows::forEach, row -> {});
    assertEquals(List.of(new AnalyticalDays.Day("2026-05-14", 4, 1, 1)), report.days());
    assertTrue(report.flags().isEmpty(), report.flags().toString());
  }

  /** One reading and two give the same. */
  @Test
  void rows_that_stand_alone_can_be_read_once() {
    Random random = new Random(3);
    List<String> lines = new ArrayList<>(List.of("filter,role,pre_g,post_g,volume_ml"));
    for (int i = 0; i < 200; i++) {
      String role = i % 9 == 0 ? "method-blank" : "sample";
      lines.add("F" + i + "," + role + ",0.1000,0." + (1000 + random.nextInt(300)) + ",500");
    }
    List<InputRow> rows = Tables.rows(lines.toArray(String[]::new));
    Tables.Outcome twice = Tables.calculate(Tables.plain(), rows);
    List<ResultRow> once = new ArrayList<>();
    BatchReport report = new BatchCalculation(Tables.plain()).runOnce(rows::forEach, once::add);
    assertEquals(twice.report().flags(), report.flags());
    assertEquals(twice.report().days(), report.days());
    assertEquals(twice.rows().size(), once.size());
    for (int i = 0; i < once.size(); i++) {
      assertEquals(twice.rows().get(i).flags(), once.get(i).flags());
      assertEquals(
          twice.rows().get(i).concentration().expanded(), once.get(i).concentration().expanded());
    }
  }

  @Test
  void what_depends_on_other_rows_cannot_be_read_once() {
    List<InputRow> pair =
        Tables.rows("filter,role,pair,pre_g,post_g,volume_ml", "F,sample,P,0.1,0.12,500");
    assertThrows(
        IllegalArgumentException.class,
        () -> new BatchCalculation(Tables.plain()).runOnce(pair::forEach, row -> {}));
    List<InputRow> sample =
        Tables.rows("filter,role,sample,pre_g,post_g,volume_ml", "F,sample,S,0.1,0.12,500");
    assertThrows(
        IllegalArgumentException.class,
        () -> new BatchCalculation(Tables.plain()).runOnce(sample::forEach, row -> {}));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new BatchCalculation(Tables.plain("blank_use = subtract"))
                .runOnce(List.<InputRow>of()::forEach, row -> {}));
    List<InputRow> twice =
        Tables.rows(
            "filter,role,pre_g,post_g", "F,sample,0.1,0.12", "G,sample,0.1,0.12", "F,sample,1,2");
    InputFaults no =
        assertThrows(
            InputFaults.class,
            () -> new BatchCalculation(Tables.plain()).runOnce(twice::forEach, row -> {}));
    assertEquals(4, no.faults().get(0).line());
  }

  /**
   * 40 CFR 136 App. B rev. 2 from blanks 0.2 −0.1 0.3 0.1 0.0 0.2 0.4 mg: mean 0.15714, s 0.17182,
   * MDLb 0.6972 (check values A6).
   */
  @Test
  void seven_blanks_give_a_detection_limit_and_six_none() {
    List<String> lines = new ArrayList<>(List.of("filter,role,pre_g,post_g,volume_ml"));
    String[] posts = {"0.1002", "0.0999", "0.1003", "0.1001", "0.1000", "0.1002", "0.1004"};
    for (int i = 0; i < posts.length; i++) {
      lines.add("B" + i + ",method-blank,0.1000," + posts[i] + ",500");
    }
    lines.add("F,sample,0.1000,0.1003,500");
    Tables.Outcome plain = Tables.calculate(Tables.plain(), lines.toArray(String[]::new));
    BlankLimits limits = BlankLimits.of(plain.report());
    assertEquals(0.6972, limits.detection().limit(), 1e-4);
    assertEquals(1.3944, limits.mgPerL(1, 0.5), 2e-4);
    assertEquals(2.7888, limits.mgPerL(2, 0.5), 4e-4);
    // Pure Appl. Chem. 67 (1995) 1699: L_C = t(0.95; 6)·s = 1.943·0.17182.
    assertEquals(1.943 * 0.17182, limits.currie().critical(), 2e-4);
    assertEquals("NOT_DETECTED", limits.standing(plain.concentration("F"), 1, 1).name());
    Tables.Outcome less =
        Tables.calculate(Tables.plain("blank_use = subtract"), lines.toArray(String[]::new));
    assertEquals(0.6972 - 0.15714, BlankLimits.of(less.report()).detection().limit(), 1e-4);
    lines.remove(1);
    assertNull(
        BlankLimits.of(Tables.calculate(Tables.plain(), lines.toArray(String[]::new)).report()));
  }

  /** JCGM 101 8.1: with a volume known to 20 % the two ways differ, to 1 % they agree. */
  @Test
  void both_ways_are_held_against_each_other() {
    Tables.Outcome outcome =
        Tables.calculate(
            Tables.plain(),
            "filter,role,pre_g,post_g,volume_ml,volume_u_ml",
            "A,sample,0.1000,0.2000,500,1",
            "B,sample,0.1000,0.2000,500,100");
    TwoWays near = outcome.concentration("A").bothWays("A");
    assertTrue(near.comparison().validated(), near.toString());
    assertEquals(200, (near.interval().low() + near.interval().high()) / 2, 0.05);
    assertFalse(outcome.concentration("B").bothWays("B").comparison().validated());
    assertEquals(near, outcome.concentration("A").bothWays("A"));
  }
}
