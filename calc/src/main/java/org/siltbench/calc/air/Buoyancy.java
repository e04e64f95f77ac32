package org.siltbench.calc.air;

import org.siltbench.calc.stats.Checked;

/** Air buoyancy and conventional mass. Densities in kg/m³; masses in any one unit. */
public final class Buoyancy {

  /** Reference density of weights, 8000 kg/m³ (OIML D 28:2004). */
  public static final double REFERENCE_WEIGHT_DENSITY = 8000;

  private static final double REFERENCE_AIR = 1.2;

  private Buoyancy() {}

  /**
   * Conventional mass of a body: m·(1 − 1.2/ρ)/(1 − 1.2/8000). Source: OIML D 28:2004.
   *
   * @param mass true mass, any unit, any sign
   * @param density of the body at 20 °C, above 1.2 kg/m³
   * @throws IllegalArgumentException if the density is not above 1.2 or a number is not finite
   */
  public static double conventionalMass(double mass, double density) {
    return Checked.finite(mass, "mass") * factor(density, REFERENCE_AIR);
  }

  /**
   * True mass from conventional mass: mc·(1 − 1.2/8000)/(1 − 1.2/ρ). Source: OIML D 28:2004.
   *
   * @param conventional conventional mass, any unit, any sign
   * @param density of the body at 20 °C, above 1.2 kg/m³
   * @throws IllegalArgumentException if the density is not above 1.2 or a number is not finite
   */
  public static double trueMass(double conventional, double density) {
    return Checked.finite(conventional, "conventional mass") / factor(density, REFERENCE_AIR);
  }

  /**
   * True mass of a body from the reading of a balance adjusted in the same air with weights of 8000
   * kg/m³: m = R·(1 − ρa/8000)/(1 − ρa/ρ).
   *
   * @param reading any unit, any sign
   * @param air air density, kg/m³
   * @param density of the body, above the air's
   * @throws IllegalArgumentException if a density is out of range or a number is not finite
   */
  public static double massFromReading(double reading, double air, double density) {
    Checked.within(air, 0, 2, "air density in kg/m³");
    return Checked.finite(reading, "reading") / factor(density, air);
  }

  private static double factor(double density, double air) {
    if (!(density > air) || Double.isInfinite(density)) {
      throw new IllegalArgumentException(
          "density of the body must be above the air's: " + density + " kg/m³");
    }
    return (1 - air / density) / (1 - air / REFERENCE_WEIGHT_DENSITY);
  }
}
