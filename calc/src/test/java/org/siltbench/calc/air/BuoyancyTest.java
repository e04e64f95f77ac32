package org.siltbench.calc.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.air.BuoyancyChange.Adjustment;

final class BuoyancyTest {

  /** Check values A3 (OIML D 28, recomputed). */
  @Test
  void conventionalAndTrueMass() {
    assertEquals(100.00009435, Buoyancy.trueMass(100, 7950), 6e-9);
    assertEquals(1.000294575, Buoyancy.trueMass(1, 2700), 6e-10);
    assertEquals(0.100030297, Buoyancy.massFromReading(0.100000, 1.2, 2650), 6e-10);
  }

  @Test
  void aWeightOfReferenceDensityNeedsNoCorrection() {
    assertEquals(20, Buoyancy.trueMass(20, 8000), 1e-14);
    assertEquals(20, Buoyancy.massFromReading(20, 1.05, 8000), 1e-14);
    assertEquals(-5e-3, Buoyancy.massFromReading(-5e-3, 0, 2650), 1e-18);
  }

  @Property(tries = 200)
  void conventionalMassTurnsBack(
      @ForAll @DoubleRange(min = -500, max = 500) double m,
      @ForAll @DoubleRange(min = 100, max = 22_000) double rho) {
    assertEquals(m, Buoyancy.conventionalMass(Buoyancy.trueMass(m, rho), rho), 1e-12 * 500);
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Buoyancy.trueMass(1, 1.2));
    assertThrows(IllegalArgumentException.class, () -> Buoyancy.trueMass(1, Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> Buoyancy.trueMass(1, Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> Buoyancy.trueMass(Double.NaN, 2000));
    assertThrows(IllegalArgumentException.class, () -> Buoyancy.conventionalMass(1, 0));
    assertThrows(IllegalArgumentException.class, () -> Buoyancy.massFromReading(1, 1200, 2650));
  }

  /** The exact weighing equation for 120 mg of glass, 1.20 -> 1.16 kg/m³: mpmath 1.3.0. */
  @Test
  void fallingAirDensityMakesTheFilterLookHeavier() {
    AirDensity before = new AirDensity(1.20, 0.001);
    AirDensity after = new AirDensity(1.16, 0.002);
    BuoyancyChange each =
        BuoyancyChange.of(120, 2400, 0, before, after, Adjustment.BEFORE_EACH_WEIGHING);
    assertEquals(-0.0014004131, each.correction(), 1.5e-6);
    BuoyancyChange once = BuoyancyChange.of(120, 2400, 0, before, after, Adjustment.ONCE);
    assertEquals(-0.0020003, once.correction(), 1e-6);
    double u = 120 * (1 / 2400.0 - 1 / 8000.0) * Math.hypot(0.001, 0.002);
    assertEquals(u, each.uncertainty(), 1e-15);
    assertEquals(120 / 2400.0 * Math.hypot(0.001, 0.002), once.uncertainty(), 1e-15);
  }

  @Test
  void anUncertainDensityCountsOnlyIfTheAirChanged() {
    AirDensity air = new AirDensity(1.2, 0);
    AirDensity thin = new AirDensity(1.1, 0);
    assertEquals(0, BuoyancyChange.of(120, 1500, 200, air, air, Adjustment.ONCE).uncertainty());
    assertEquals(
        120 * 0.1 * 200 / (1500.0 * 1500),
        BuoyancyChange.of(120, 1500, 200, air, thin, Adjustment.ONCE).uncertainty(),
        1e-12);
  }

  @Test
  void withoutRoomConditionsTheSpreadOfTheWeatherCounts() {
    BuoyancyChange c =
        BuoyancyChange.uncorrected(120, 2400, 0.012, Adjustment.BEFORE_EACH_WEIGHING);
    assertEquals(0, c.correction());
    assertEquals(120 * (1 / 2400.0 - 1 / 8000.0) * Math.sqrt(2) * 0.012, c.uncertainty(), 1e-15);
    assertEquals(
        120 * (1 / 2000.0 - 1 / 8000.0) * Math.sqrt(2) * 0.012,
        BuoyancyChange.uncorrected(120, 2000, 0.012, Adjustment.BEFORE_EACH_WEIGHING).uncertainty(),
        1e-15);
    assertEquals(
        10 * (1 / 8000.0 - 1 / 16000.0) * Math.sqrt(2),
        BuoyancyChange.uncorrected(10, 16000, 1, Adjustment.BEFORE_EACH_WEIGHING).uncertainty(),
        1e-15);
  }

  @Test
  void nonsenseInTheChangeIsRefused() {
    AirDensity air = AirDensity.CONVENTIONAL;
    assertThrows(
        IllegalArgumentException.class,
        () -> BuoyancyChange.of(-1, 2400, 0, air, air, Adjustment.ONCE));
    assertThrows(
        IllegalArgumentException.class,
        () -> BuoyancyChange.of(1, 0, 0, air, air, Adjustment.ONCE));
    assertThrows(
        IllegalArgumentException.class,
        () -> BuoyancyChange.of(1, 2400, -1, air, air, Adjustment.ONCE));
    assertThrows(
        IllegalArgumentException.class,
        () -> BuoyancyChange.uncorrected(-1, 2400, 0.01, Adjustment.ONCE));
    assertThrows(
        IllegalArgumentException.class,
        () -> BuoyancyChange.uncorrected(1, -2400, 0.01, Adjustment.ONCE));
    assertThrows(
        IllegalArgumentException.class,
        () -> BuoyancyChange.uncorrected(1, 2400, -0.01, Adjustment.ONCE));
  }
}
