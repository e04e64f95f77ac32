package org.siltbench.calc.air;

import org.siltbench.calc.stats.Checked;

/**
 * The CIPM-2007 equation for the density of moist air.
 *
 * <p>ρ = p·Mₐ/(Z·R·T)·[1 − xᵥ(1 − Mᵥ/Mₐ)]. Source: A. Picard, R. S. Davis, M. Gläser, K. Fujii,
 * Metrologia 45 (2008) 149-155, doi:10.1088/0026-1394/45/2/004.
 */
public final class Cipm2007 {

  /** The equation's usual mole fraction of carbon dioxide, 400 µmol/mol. */
  public static final double CARBON_DIOXIDE = 0.0004;

  private static final double GAS_CONSTANT = 8.314472;
  private static final double MOLAR_MASS_WATER = 18.01528e-3;

  private Cipm2007() {}

  /**
   * Density of moist air in kg/m³.
   *
   * @param air the state; outside the formula's range the value is an extrapolation
   * @param carbonDioxide mole fraction, [0, 0.01], as 0.0004
   * @throws IllegalArgumentException if the mole fraction is out of range
   */
  public static double density(AirState air, double carbonDioxide) {
    Checked.within(carbonDioxide, 0, 0.01, "mole fraction of carbon dioxide");
    double ma = 28.96546e-3 + 12.011e-3 * (carbonDioxide - 0.0004);
    double p = air.hectopascals() * 100;
    double xv = vapourFraction(air);
    double ideal = p * ma / (compressibility(air) * GAS_CONSTANT * air.kelvin());
    return ideal * (1 - xv * (1 - MOLAR_MASS_WATER / ma));
  }

  /** Saturation vapour pressure over water, Pa: exp(A·T² + B·T + C + D/T). */
  public static double saturationPressure(AirState air) {
    double t = air.kelvin();
    return Math.exp(1.2378847e-5 * t * t - 1.9121316e-2 * t + 33.93711047 - 6343.1645 / t);
  }

  /** Enhancement factor f = α + β·p + γ·t², no unit. */
  public static double enhancement(AirState air) {
    double t = air.celsius();
    return 1.00062 + 3.14e-8 * air.hectopascals() * 100 + 5.6e-7 * t * t;
  }

  /** Mole fraction of water vapour, h·f·pₛᵥ/p, no unit. */
  public static double vapourFraction(AirState air) {
    double h = air.relativeHumidity() / 100;
    return h * enhancement(air) * saturationPressure(air) / (air.hectopascals() * 100);
  }

  /** Compressibility factor Z, no unit. */
  public static double compressibility(AirState air) {
    double t = air.celsius();
    double xv = vapourFraction(air);
    double r = air.hectopascals() * 100 / air.kelvin();
    double first =
        1.58123e-6
            - 2.9331e-8 * t
            + 1.1043e-10 * t * t
            + (5.707e-6 - 2.051e-8 * t) * xv
            + (1.9898e-4 - 2.376e-6 * t) * xv * xv;
    return 1 - r * first + r * r * (1.83e-11 - 0.765e-8 * xv * xv);
  }
}
