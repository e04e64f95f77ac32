package org.siltbench.calc.highconc;

import org.siltbench.calc.stats.Checked;

/**
 * How fast a grain sinks in still water: why an aliquot must be drawn while the bottle is shaken,
 * and why sand is lost from it all the same.
 *
 * @param waterDensity kg/m³, above zero
 * @param viscosity dynamic viscosity of the water, Pa·s, above zero; 0.0010016 at 20 °C
 */
public record Settling(double waterDensity, double viscosity) {

  /** Water at 20 °C: 998.2 kg/m³, 1.0016 mPa·s. */
  public static final Settling AT_20_CELSIUS = new Settling(998.2, 1.0016e-3);

  /** The Reynolds number up to which Stokes' law is off by 5 % at most (common practice). */
  public static final double STOKES_REYNOLDS = 0.25;

  private static final double GRAVITY = 9.80665;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is not above zero
   */
  public Settling {
    Checked.positive(waterDensity, "density of water in kg/m³");
    Checked.positive(viscosity, "viscosity in Pa·s");
  }

  /**
   * Stokes' law, v = (ρs − ρw)·g·d²/(18·µ), with g = 9.80665 m/s².
   *
   * @param diameter of the grain, m, zero or more
   * @param sedimentDensity kg/m³, above zero; below the water's the grain rises and v is negative
   * @return m/s
   * @throws IllegalArgumentException if a number is out of range
   */
  public double stokes(double diameter, double sedimentDensity) {
    Checked.notNegative(diameter, "diameter in m");
    Checked.positive(sedimentDensity, "density of sediment in kg/m³");
    double excess = sedimentDensity - waterDensity;
    return excess * GRAVITY * diameter * diameter / (18 * viscosity);
  }

  /**
   * True if the grain is small enough for Stokes' law: Reynolds number v·d·ρw/µ at most {@link
   * #STOKES_REYNOLDS}. Quartz of 62 µm, the boundary of sand, is just below it.
   *
   * @param diameter m, zero or more
   * @param sedimentDensity kg/m³, above zero
   * @throws IllegalArgumentException if a number is out of range
   */
  public boolean stokesHolds(double diameter, double sedimentDensity) {
    double speed = Math.abs(stokes(diameter, sedimentDensity));
    return speed * diameter * waterDensity / viscosity <= STOKES_REYNOLDS;
  }
}
