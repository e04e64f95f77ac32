package org.siltbench.calc.air;

/** The two short formulas for moist air. */
final class ShortFormulas {

  private ShortFormulas() {}

  /** OIML R 111-1:2004 E.3-1: (0.34848·p − 0.009·hr·exp(0.061·t))/(273.15 + t), kg/m³. */
  static double oiml(AirState air) {
    double vapour = 0.009 * air.relativeHumidity() * Math.exp(0.061 * air.celsius());
    return (0.34848 * air.hectopascals() - vapour) / air.kelvin();
  }

  /** NIST SOP 2 option B: 0.46460·(P − 0.0037960·U·es)/(273.15 + t), mg/cm³ = kg/m³. */
  static double nistOptionB(AirState air) {
    double es = 1.3146e9 * Math.exp(-5315.56 / air.kelvin());
    double vapour = 0.0037960 * air.relativeHumidity() * es;
    return 0.46460 * (air.millimetresMercury() - vapour) / air.kelvin();
  }
}
