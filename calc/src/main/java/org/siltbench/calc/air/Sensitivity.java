package org.siltbench.calc.air;

/** Derivatives of the air density by central differences. */
final class Sensitivity {

  private Sensitivity() {}

  /** ∂ρ/∂t, kg/m³ per °C. */
  static double temperature(AirFormula formula, AirState a) {
    double step = 1e-3;
    AirState up = a.with(a.celsius() + step, a.hectopascals(), a.relativeHumidity());
    AirState down = a.with(a.celsius() - step, a.hectopascals(), a.relativeHumidity());
    return (formula.density(up) - formula.density(down)) / (2 * step);
  }

  /** ∂ρ/∂p, kg/m³ per hPa. */
  static double pressure(AirFormula formula, AirState a) {
    double step = 1e-2;
    AirState up = a.with(a.celsius(), a.hectopascals() + step, a.relativeHumidity());
    AirState down = a.with(a.celsius(), a.hectopascals() - step, a.relativeHumidity());
    return (formula.density(up) - formula.density(down)) / (2 * step);
  }

  /** ∂ρ/∂h, kg/m³ per percentage point; the formulas are close to linear in h. */
  static double humidity(AirFormula formula, AirState a) {
    AirState dry = a.with(a.celsius(), a.hectopascals(), 0);
    AirState wet = a.with(a.celsius(), a.hectopascals(), 100);
    return (formula.density(wet) - formula.density(dry)) / 100;
  }
}
