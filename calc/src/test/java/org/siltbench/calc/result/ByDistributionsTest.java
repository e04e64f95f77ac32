package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.siltbench.calc.montecarlo.Interval;
import org.siltbench.calc.stats.Quantiles;

final class ByDistributionsTest {

  private static final String HEADER = "filter,role,pre_g,post_g,volume_ml,volume_u_ml";

  private static Concentration of(String row, String... lines) {
    return Tables.calculate(Tables.plain(lines), HEADER, row).concentration("F1");
  }

  private static Interval interval(Concentration c) {
    Interval i = c.interval();
    assertNotNull(i);
    return i;
  }

  /** Only the volume is uncertain: C = m/V turns the normal quantiles of V over, exactly. */
  @Test
  void poorlyKnownVolumeGivesTheSkewedInterval() {
    Interval i = interval(of("F1,sample,0.10000,0.20000,500,50", "u_mass_mg = 0"));
    double z = Quantiles.normal(0.975);
    assertEquals(100 / (0.5 + z * 0.05), i.low(), 0.5);
    assertEquals(100 / (0.5 - z * 0.05), i.high(), 1.0);
    assertTrue(i.high() - 200 > 200 - i.low());
  }

  /** k = 2 means 95.45 % for a normal result, not 95 %. */
  @Test
  void aStatedFactorGivesTheProbabilityItStandsFor() {
    Interval i =
        interval(
            of(
                "F1,sample,0.10000,0.20000,500,50",
                "u_mass_mg = 0",
                "coverage_probability_pct = none",
                "coverage_k = 2"));
    assertEquals(0.9545, i.probability(), 5e-5);
    assertEquals(100 / 0.6, i.low(), 0.5);
    assertEquals(100 / 0.4, i.high(), 1.0);
  }

  /** A spread known from 3 weighings is a t distribution: the residue's ends lie at t(2), not z. */
  @Test
  void fewObservationsWidenTheInterval() {
    String row = "F1,sample,0.10000,0.10100,500,26";
    Interval known = interval(of(row, "u_mass_mg = 1"));
    Interval few = interval(of(row, "u_mass_mg = 1", "u_mass_dof = 2"));
    double u = Math.sqrt(2) / 0.5;
    assertEquals(2 + 1.96 * u, known.high(), 0.15);
    assertEquals(2 + 4.303 * u, few.high(), 0.6);
  }

  @Test
  void subSamplingAddsToTheConcentration() {
    Interval without = interval(of("F1,sample,0.10000,0.20000,500,26", "u_mass_mg = 0"));
    Interval with =
        interval(of("F1,sample,0.10000,0.20000,500,26", "u_mass_mg = 0", "u_subsampling_pct = 20"));
    assertEquals(Math.hypot(without.length(), 2 * 1.96 * 40), with.length(), 0.03 * with.length());
  }

  @Test
  void theSameRowGivesTheSameIntervalWhateverStandsBesideIt() {
    String row = "F1,sample,0.10000,0.20000,500,50";
    Interval alone = interval(of(row));
    Interval after =
        interval(
            Tables.calculate(Tables.plain(), HEADER, "F0,sample,0.10000,0.15000,500,60", row)
                .concentration("F1"));
    assertEquals(alone, after);
  }
}
