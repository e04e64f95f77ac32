package org.siltbench.calc.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AirDensityTest {

  /** CIPM-2007 (Metrologia 45 (2008) 149-155) and OIML R 111-1 E.3-1, check values A3. */
  @ParameterizedTest
  @CsvSource({
    "20,1013.25,50,1.199314,1.199294",
    "20,1013.25,0,1.204557,1.204494",
    "20,1000.00,50,1.183557,1.183543",
    "15,1013.25,50,1.221631,1.221495",
    "23,1013.25,60,1.184840,1.184876",
    "25,1013.25,40,1.178710,1.178746"
  })
  void publishedDensities(double t, double p, double h, double cipm, double oiml) {
    AirState air = new AirState(t, p, h);
    assertEquals(cipm, AirDensity.of(air, AirFormula.CIPM_2007).value(), 6e-7);
    assertEquals(oiml, AirDensity.of(air, AirFormula.OIML_R111_E3).value(), 6e-7);
  }

  /** The same equation in 30-digit arithmetic: mpmath 1.3.0. */
  @ParameterizedTest
  @CsvSource({
    "20,1013.25,50,0.0004,1.199313895",
    "22,850,30,0.0004,1.000027207",
    "18,980,70,0.0004,1.166521073",
    "26,1030,20,0.0004,1.196890366",
    "22,850,30,0.0005,1.000068432",
    "26,1030,20,0.0005,1.196939794"
  })
  void agreesWithHighPrecision(double t, double p, double h, double co2, double expected) {
    assertEquals(expected, Cipm2007.density(new AirState(t, p, h), co2), 6e-10);
  }

  /** Check values A3, parts of the equation at 20 °C, 101 325 Pa, 50 %. */
  @Test
  void partsOfTheEquation() {
    AirState air = AirState.REFERENCE;
    assertEquals(2339.163, Cipm2007.saturationPressure(air), 6e-4);
    assertEquals(1.004026, Cipm2007.enhancement(air), 6e-7);
    assertEquals(0.0115893, Cipm2007.vapourFraction(air), 6e-8);
    assertEquals(0.9996148, Cipm2007.compressibility(air), 6e-8);
  }

  /** NIST SOP 2, option B, its worked example (check values A3). */
  @Test
  void workedExampleOfNist() {
    AirState air = AirState.ofMillimetresMercury(22.3, 748.1, 37);
    assertEquals(748.1, air.millimetresMercury(), 1e-9);
    assertEquals(1.17194, AirDensity.of(air, AirFormula.NIST_SOP2_B).value(), 6e-6);
  }

  @Property(tries = 300)
  void theThreeFormulasAgreeWithinTheirUncertainty(
      @ForAll @DoubleRange(min = 15, max = 27) double t,
      @ForAll @DoubleRange(min = 900, max = 1100) double p,
      @ForAll @DoubleRange(min = 0, max = 80) double h) {
    AirState air = new AirState(t, p, h);
    double cipm = AirDensity.of(air, AirFormula.CIPM_2007).value();
    assertEquals(1, AirDensity.of(air, AirFormula.OIML_R111_E3).value() / cipm, 4e-4);
    assertEquals(1, AirDensity.of(air, AirFormula.NIST_SOP2_B).value() / cipm, 5e-4);
  }

  /** Derivatives of CIPM-2007 at the reference state in 30 digits: mpmath 1.3.0. */
  @Test
  void instrumentsAddTheirUncertainty() {
    AirState air = AirState.REFERENCE;
    double own = 1.199313895 * 22e-6;
    assertEquals(own, AirDensity.of(air, AirFormula.CIPM_2007).uncertainty(), 1e-10);
    double u = AirDensity.of(air, AirFormula.CIPM_2007, 0.5, 0, 0).uncertainty();
    assertEquals(Math.hypot(own, 0.5 * 0.0044276744), u, 1e-8);
    u = AirDensity.of(air, AirFormula.CIPM_2007, 0, 2, 0).uncertainty();
    assertEquals(Math.hypot(own, 2 * 0.0011892347), u, 1e-8);
    u = AirDensity.of(air, AirFormula.CIPM_2007, 0, 0, 5).uncertainty();
    assertEquals(Math.hypot(own, 5 * 0.00010470023), u, 5e-7);
  }

  @Test
  void aFormulaIsNotUsedOutsideItsRange() {
    for (AirState air :
        new AirState[] {
          new AirState(9.9, 1000, 50),
          new AirState(30.1, 1000, 50),
          new AirState(20, 899, 50),
          new AirState(20, 1101, 50),
          new AirState(20, 1000, 81)
        }) {
      assertFalse(AirFormula.OIML_R111_E3.covers(air));
      assertThrows(
          IllegalArgumentException.class, () -> AirDensity.of(air, AirFormula.OIML_R111_E3));
    }
    assertTrue(AirFormula.OIML_R111_E3.covers(new AirState(10, 900, 80)));
    assertTrue(AirFormula.OIML_R111_E3.covers(new AirState(30, 1100, 0)));
    assertTrue(AirFormula.CIPM_2007.covers(new AirState(15, 600, 100)));
    assertFalse(AirFormula.CIPM_2007.covers(new AirState(28, 1000, 50)));
    assertEquals(2e-4, AirFormula.OIML_R111_E3.relativeUncertainty());
  }

  @Test
  void aPressureTypedInPascalOrNanIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new AirState(20, 101325, 50));
    assertThrows(IllegalArgumentException.class, () -> new AirState(20, 760 / 25.4, 50));
    assertThrows(IllegalArgumentException.class, () -> new AirState(293.15, 1013, 50));
    assertThrows(IllegalArgumentException.class, () -> new AirState(20, 1013, 101));
    assertThrows(IllegalArgumentException.class, () -> new AirState(Double.NaN, 1013, 50));
    AirState air = AirState.REFERENCE;
    assertThrows(
        IllegalArgumentException.class, () -> AirDensity.of(air, AirFormula.CIPM_2007, -1, 0, 0));
    assertThrows(
        IllegalArgumentException.class, () -> AirDensity.of(air, AirFormula.CIPM_2007, 0, -1, 0));
    assertThrows(
        IllegalArgumentException.class, () -> AirDensity.of(air, AirFormula.CIPM_2007, 0, 0, -1));
    assertThrows(IllegalArgumentException.class, () -> Cipm2007.density(air, 0.5));
    assertThrows(IllegalArgumentException.class, () -> new AirDensity(0, 0));
    assertThrows(IllegalArgumentException.class, () -> new AirDensity(1.2, -0.1));
  }

  /**
   * Standard atmosphere at 1000 m: 1.112 kg/m³ at 8.5 °C; at room temperature about 1.06 to 1.08.
   */
  @Test
  void unmeasuredAirFallsWithHeight() {
    assertEquals(new AirDensity(1.2, 0.12 / Math.sqrt(3)), AirDensity.unmeasured(0));
    assertEquals(1.068, AirDensity.unmeasured(1000).value(), 5e-4);
    assertEquals(0.1 / Math.sqrt(3), relative(AirDensity.unmeasured(2500)), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> AirDensity.unmeasured(9000));
  }

  private static double relative(AirDensity d) {
    return d.uncertainty() / d.value();
  }
}
