package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.montecarlo.Interval;
import org.siltbench.calc.uncertainty.Budget;
import org.siltbench.calc.uncertainty.Part;

final class BalanceBudgetTest {

  private static final String HEADER = "filter,role,sample,pre_g,post_g,volume_ml,volume_u_ml";

  private static final BalanceRecord BALANCE =
      new BalanceRecord(0.05, 12, 0.03, 0.02, 1e-5, 2e-5, 0.02, 2500);

  private static Part part(Budget budget, Cause cause) {
    return budget.parts().stream()
        .filter(p -> p.name().equals(cause.title()))
        .findFirst()
        .orElseThrow();
  }

  // Each part by its own formula; masses in mg, 0.5 L.
  @Test
  void every_part_of_a_known_balance_has_its_formula() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.method(
                "sm-2540d-23",
                "u_volume_reading_ml = 1.5",
                "u_volume_calibration_pct = 0.3",
                "u_volume_temperature_pct = 0.1",
                "u_subsampling_pct = 2",
                "u_moisture_mg = 0.04"),
            BALANCE,
            Tables.rows(HEADER, "F1,sample,,0.11234,0.12891,500,"));
    Concentration c = out.concentration("F1");
    Budget budget = c.budget();
    double r2 = Math.sqrt(2);
    assertEquals(0.05 * r2, part(budget, Cause.REPEATABILITY).u(), 1e-12);
    assertEquals(12, part(budget, Cause.REPEATABILITY).dof());
    assertEquals(0.01 / Math.sqrt(6), part(budget, Cause.RESOLUTION).u(), 1e-12);
    assertEquals(0.03 / Math.sqrt(3) * r2, part(budget, Cause.LINEARITY).u(), 1e-12);
    assertEquals(0.02 / Math.sqrt(3) * r2, part(budget, Cause.ECCENTRICITY).u(), 1e-12);
    assertEquals(16.57e-5, part(budget, Cause.CHECK_WEIGHT).u(), 1e-12);
    assertEquals(128.91 * 2e-5, part(budget, Cause.DRIFT).u(), 1e-12);
    // 0.02 kg/m3 x (1/2500 - 1/8000) m3/kg x 128.91 mg
    assertEquals(128.91 * 0.02 * 2.75e-4, part(budget, Cause.BUOYANCY).u(), 1e-12);
    assertEquals(0.04 * r2, part(budget, Cause.MOISTURE).u(), 1e-12);
    assertEquals(1.5, part(budget, Cause.VOLUME_READING).u(), 1e-12);
    assertEquals(1.5, part(budget, Cause.VOLUME_CALIBRATION).u(), 1e-12);
    assertEquals(0.5, part(budget, Cause.VOLUME_TEMPERATURE).u(), 1e-12);
    assertEquals(0.6628, part(budget, Cause.SUBSAMPLING).u(), 1e-12);
    assertEquals(2, part(budget, Cause.REPEATABILITY).sensitivity(), 1e-12);
    assertEquals(-33.14 / 500, part(budget, Cause.VOLUME_READING).sensitivity(), 1e-12);
    assertEquals(1, part(budget, Cause.SUBSAMPLING).sensitivity());
    assertEquals(12, budget.parts().size());
    assertEquals(c.u(), budget.u(), 1e-12);
    assertEquals(c.dof(), budget.dof(), 1e-6 * c.dof());
    assertEquals(Math.hypot(Math.hypot(1.5, 1.5), 0.5), c.volumeU(), 1e-12);
    assertEquals("mL", part(budget, Cause.VOLUME_READING).unit());
    assertEquals(0.5, c.litres());
  }

  @Test
  void what_the_filters_of_a_sample_share_is_not_averaged_away() {
    String[] lines = {HEADER, "F1,sample,S,0.1000,0.1200,250,", "F2,sample,S,0.1000,0.1300,250,"};
    Budget budget =
        Tables.calculate(Tables.method("sm-2540d-23"), BALANCE, Tables.rows(lines))
            .concentration("F1")
            .budget();
    assertEquals(50e-5, part(budget, Cause.CHECK_WEIGHT).u(), 1e-12);
    assertEquals(250 * 2e-5, part(budget, Cause.DRIFT).u(), 1e-12);
    assertEquals(500 * 0.003, part(budget, Cause.VOLUME_CALIBRATION).u(), 1e-12);
    assertEquals(500 * 0.001, part(budget, Cause.VOLUME_TEMPERATURE).u(), 1e-12);
    assertEquals(Math.sqrt(2), part(budget, Cause.VOLUME_READING).u(), 1e-12);
    assertEquals(0.05 * 2, part(budget, Cause.REPEATABILITY).u(), 1e-12);
    assertEquals(0.1 / Math.sqrt(12) * 2, part(budget, Cause.RESOLUTION).u(), 1e-12);
  }

  @Test
  void a_stated_volume_uncertainty_takes_the_place_of_the_method_s_for_that_filter() {
    Budget budget =
        Tables.calculate(
                Tables.method("sm-2540d-23"),
                HEADER,
                "F1,sample,S,0.1000,0.1200,200,3",
                "F2,sample,S,0.1000,0.1300,300,")
            .concentration("F1")
            .budget();
    assertEquals(3, part(budget, Cause.VOLUME).u(), 1e-12);
    assertEquals(1, part(budget, Cause.VOLUME_READING).u(), 1e-12);
    assertEquals(300 * 0.003, part(budget, Cause.VOLUME_CALIBRATION).u(), 1e-12);
  }

  // Against drawing numbers: the model with shared and independent errors, 100 000 draws.
  @Test
  void a_monte_carlo_of_the_whole_sample_agrees_with_the_first_order() {
    String[] lines = {HEADER, "F1,sample,S,0.1000,0.1200,250,", "F2,sample,S,0.1000,0.1300,250,"};
    Concentration c =
        Tables.calculate(Tables.method("sm-2540d-23", "u_mass_mg = 0.3"), lines)
            .concentration("F1");
    Random random = new Random(11);
    int n = 100_000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double mass = 50;
      for (int w = 0; w < 4; w++) {
        mass += 0.3 * random.nextGaussian();
      }
      double shared = 1 + 0.003 * random.nextGaussian() + 0.001 * random.nextGaussian();
      double volume = 500 * shared + random.nextGaussian() + random.nextGaussian();
      double y = mass / (volume / 1000) - c.mgPerL();
      sum += y;
      squares += y * y;
    }
    double sd = Math.sqrt(squares / n - sum / n * (sum / n));
    assertEquals(sd, c.u(), 4 * sd / Math.sqrt(2.0 * n));
  }

  // u(V)/V = 10 %: 1/V bends; the interval of the ratio by hand (normal numerator and denominator,
  // Fieller) is 100/(1 +- 1.96*0.1) when the mass is certain: 83.6 to 124.4 mg/L.
  @Test
  void a_volume_known_to_ten_percent_goes_by_distributions() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain("u_mass_mg = 0.0001"),
            HEADER,
            "F1,sample,,0.10000000,0.15000000,500,50",
            "F2,sample,,0.10000000,0.15000000,500,25",
            "F3,sample,,0.10000000,0.15000000,500,130");
    Concentration c = out.concentration("F1");
    Interval interval = c.interval();
    assertNotNull(interval);
    assertEquals(100 / 1.196, interval.low(), 0.3);
    assertEquals(100 / 0.804, interval.high(), 0.5);
    assertEquals(interval.length() / 2, c.expanded(), 1e-12);
    assertEquals(10, c.u(), 1e-3);
    assertTrue(out.row("F1").flags().contains(Flag.BY_DISTRIBUTIONS));
    assertFalse(out.row("F2").flags().contains(Flag.BY_DISTRIBUTIONS));
    assertTrue(out.row("F3").flags().contains(Flag.VOLUME_DOUBTFUL));
    assertFalse(out.row("F3").flags().contains(Flag.BY_DISTRIBUTIONS));
    Concentration again =
        Tables.calculate(
                Tables.plain("u_mass_mg = 0.0001"),
                HEADER,
                "F1,sample,,0.10000000,0.15000000,500,50")
            .concentration("F1");
    assertEquals(interval, again.interval());
  }

  @Test
  void sub_sampling_and_residue_enter_the_distributions_too() {
    Concentration c =
        Tables.calculate(
                Tables.plain(
                    "u_mass_mg = 2",
                    "u_subsampling_pct = 10",
                    "coverage_k = 2",
                    "coverage_probability_pct = none"),
                HEADER,
                "F1,sample,,0.1000,0.1500,500,30")
            .concentration("F1");
    Interval interval = c.interval();
    assertNotNull(interval);
    assertEquals(2 * c.u(), interval.length() / 2, 0.06 * c.u());
    assertEquals(0.9545, interval.probability(), 5e-5); // what k = 2 means
  }

  @Test
  void few_degrees_of_freedom_are_said() {
    Tables.Outcome out =
        Tables.calculate(Tables.plain("u_mass_dof = 3"), HEADER, "F1,sample,,0.1000,0.1500,500,0");
    assertTrue(out.row("F1").flags().contains(Flag.FEW_DOF));
    assertEquals(3, out.concentration("F1").dof(), 1e-9);
    assertEquals(3.182, out.concentration("F1").k(), 1e-3);
    Tables.Outcome five =
        Tables.calculate(Tables.plain("u_mass_dof = 5"), HEADER, "F1,sample,,0.1000,0.1500,500,0");
    assertFalse(five.row("F1").flags().contains(Flag.FEW_DOF));
  }

  @Test
  void a_stated_factor_is_used_whatever_the_degrees_of_freedom() {
    Concentration c =
        Tables.calculate(
                Tables.plain(
                    "u_mass_dof = 3", "coverage_k = 2.5", "coverage_probability_pct = none"),
                HEADER,
                "F1,sample,,0.1000,0.1500,500,0")
            .concentration("F1");
    assertEquals(2.5, c.k());
    assertEquals(2.5 * c.u(), c.expanded(), 1e-12);
  }

  @Test
  void the_blank_on_a_known_balance_rests_on_its_repeatability() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.method("sm-2540d-23", "blank_use = subtract"),
            BALANCE,
            Tables.rows(
                HEADER,
                "F1,sample,,0.11234,0.12891,500,",
                "B1,method-blank,,0.10000,0.10010,500,"));
    assertEquals(0.05 * Math.sqrt(2), out.report().correction().u(), 1e-12);
    assertEquals(
        0.05 * Math.sqrt(2), part(out.concentration("F1").budget(), Cause.BLANK).u(), 1e-12);
  }

  @Test
  void a_balance_record_out_of_range_is_refused() {
    double[] good = {0.05, 12, 0.03, 0.02, 1e-5, 2e-5, 0.02, 2500};
    for (int i = 0; i < good.length; i++) {
      double[] wrong = good.clone();
      wrong[i] = -1;
      assertThrows(IllegalArgumentException.class, () -> record(wrong), "number " + i);
    }
    double[] zeros = {0, Double.POSITIVE_INFINITY, 0, 0, 0, 0, 0, 1};
    assertEquals(0, record(zeros).repeatabilityMg());
    for (int i : new int[] {1, 7}) {
      double[] wrong = good.clone();
      wrong[i] = 0;
      assertThrows(IllegalArgumentException.class, () -> record(wrong));
    }
  }

  private static BalanceRecord record(double[] n) {
    return new BalanceRecord(n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7]);
  }

  @Test
  void every_cause_says_what_it_is() {
    for (Cause cause : Cause.values()) {
      assertFalse(cause.means().isBlank());
      assertTrue(List.of("mg", "mL", "mg/L").contains(cause.unit()));
    }
  }
}
