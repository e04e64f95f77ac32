package org.siltbench.calc.air;

/** The published formulas for the density of moist air. */
public enum AirFormula {
  /**
   * The CIPM-2007 equation, 400 µmol/mol carbon dioxide. Stated range 600 to 1100 hPa, 15 to 27 °C
   * (Picard et al. 2008); formula relative standard uncertainty 22·10⁻⁶.
   */
  CIPM_2007(22e-6, 600, 1100, 15, 27, 100),
  /**
   * OIML R 111-1:2004 E.3-1, for 900 to 1100 hPa, 10 to 30 °C, humidity under 80 %; relative
   * standard uncertainty 2·10⁻⁴.
   */
  OIML_R111_E3(2e-4, 900, 1100, 10, 30, 80),
  /**
   * NIST SOP 2, option B. The text gives no uncertainty; 5·10⁻⁴ is this bench's own cautious figure
   * (it stays within 2·10⁻⁴ of CIPM-2007 over the OIML range).
   */
  NIST_SOP2_B(5e-4, 900, 1100, 10, 30, 100);

  private final double relativeUncertainty;
  private final double lowestPressure;
  private final double highestPressure;
  private final double coldest;
  private final double warmest;
  private final double dampest;

  AirFormula(
      double relativeUncertainty,
      double lowestPressure,
      double highestPressure,
      double coldest,
      double warmest,
      double dampest) {
    this.relativeUncertainty = relativeUncertainty;
    this.lowestPressure = lowestPressure;
    this.highestPressure = highestPressure;
    this.coldest = coldest;
    this.warmest = warmest;
    this.dampest = dampest;
  }

  /** Relative standard uncertainty of the formula itself, no unit. */
  public double relativeUncertainty() {
    return relativeUncertainty;
  }

  /** True if the formula is stated for this air, ends included. */
  public boolean covers(AirState air) {
    return air.hectopascals() >= lowestPressure
        && air.hectopascals() <= highestPressure
        && air.celsius() >= coldest
        && air.celsius() <= warmest
        && air.relativeHumidity() <= dampest;
  }

  /** Density in kg/m³. */
  double density(AirState air) {
    return switch (this) {
      case CIPM_2007 -> Cipm2007.density(air, Cipm2007.CARBON_DIOXIDE);
      case OIML_R111_E3 -> ShortFormulas.oiml(air);
      case NIST_SOP2_B -> ShortFormulas.nistOptionB(air);
    };
  }
}
