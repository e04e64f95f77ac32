package org.siltbench.calc.air;

import org.siltbench.calc.stats.Checked;

/**
 * A density of air with its standard uncertainty.
 *
 * @param value kg/m³ (= mg/cm³), above zero
 * @param uncertainty standard uncertainty, kg/m³, zero or more
 */
public record AirDensity(double value, double uncertainty) {

  /** The conventional reference density of air, 1.2 kg/m³, exact by OIML D 28:2004. */
  public static final AirDensity CONVENTIONAL = new AirDensity(1.2, 0);

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the density is not above zero or the uncertainty negative
   */
  public AirDensity {
    Checked.positive(value, "air density in kg/m³");
    Checked.notNegative(uncertainty, "uncertainty of the air density in kg/m³");
  }

  /**
   * The density by a formula, with the formula's own uncertainty only.
   *
   * @throws IllegalArgumentException if the formula is not stated for this air: use CIPM-2007 or
   *     check the numbers
   */
  public static AirDensity of(AirState air, AirFormula formula) {
    return of(air, formula, 0, 0, 0);
  }

  /**
   * The density by a formula, with uncertainty from the formula and the three instruments.
   *
   * <p>u² = (ρ·u_formula)² + Σ(∂ρ/∂x · u(x))², derivatives by central differences. Source: GUM
   * (JCGM 100:2008) 5.1.2; sensitivities as in OIML R 111-1:2004 C.6.3.4.
   *
   * @param air the state
   * @param formula which formula
   * @param celsiusUncertainty u(t), °C
   * @param hectopascalUncertainty u(p), hPa
   * @param humidityUncertainty u(h), percentage points
   * @throws IllegalArgumentException if the formula does not cover the air or an uncertainty is
   *     negative
   */
  public static AirDensity of(
      AirState air,
      AirFormula formula,
      double celsiusUncertainty,
      double hectopascalUncertainty,
      double humidityUncertainty) {
    if (!formula.covers(air)) {
      throw new IllegalArgumentException(formula + " is not stated for " + air);
    }
    Checked.notNegative(celsiusUncertainty, "u(t)");
    Checked.notNegative(hectopascalUncertainty, "u(p)");
    Checked.notNegative(humidityUncertainty, "u(h)");
    double rho = formula.density(air);
    double own = rho * formula.relativeUncertainty();
    double t = Sensitivity.temperature(formula, air) * celsiusUncertainty;
    double p = Sensitivity.pressure(formula, air) * hectopascalUncertainty;
    double h = Sensitivity.humidity(formula, air) * humidityUncertainty;
    return new AirDensity(rho, Math.sqrt(own * own + t * t + p * p + h * h));
  }

  /**
   * A density for a room whose air was not measured: 1.2 kg/m³ at sea level, lower with height, and
   * a standard uncertainty of 10 % / √3, rectangular. Sources: ρ = 1.2·exp(−ρ₀·g·h/p₀), OIML R
   * 111-1:2004 E.3-2 (p₀ 101 325 Pa, ρ₀ 1.2 kg/m³, g 9.81 m/s²); the ± 10 % are those of OIML D 28
   * for the range of air densities.
   *
   * @param metres height above sea level, [−500, 6000] m
   * @throws IllegalArgumentException if the height is out of range
   */
  public static AirDensity unmeasured(double metres) {
    Checked.within(metres, -500, 6000, "height in m");
    double rho = 1.2 * Math.exp(-1.2 * 9.81 * metres / 101325);
    return new AirDensity(rho, 0.1 * rho / Math.sqrt(3));
  }
}
