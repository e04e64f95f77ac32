package org.siltbench.calc.highconc;

import org.siltbench.calc.stats.Checked;

/**
 * Mass ratio (parts of sediment per million parts of water-sediment mixture, ppm by mass) and
 * concentration (mg of sediment per litre of mixture). The two are the same number only in dilute
 * suspensions.
 *
 * @param waterDensity ρw, kg/L (= g/cm³), in (0.9, 1.2)
 * @param sedimentDensity ρs, kg/L, above the water's; 2.65 for quartz
 */
public record MassRatio(double waterDensity, double sedimentDensity) {

  /** Water of 1.000 kg/L and sediment of 2.65 kg/L, the convention of the trade's tables. */
  public static final MassRatio CONVENTIONAL = new MassRatio(1.000, 2.65);

  /**
   * Checks the densities.
   *
   * @throws IllegalArgumentException if one is out of range
   */
  public MassRatio {
    Checked.within(waterDensity, 0.9, 1.2, "density of water in kg/L");
    Checked.finite(sedimentDensity, "density of sediment in kg/L");
    if (sedimentDensity <= waterDensity) {
      throw new IllegalArgumentException(
          "density of sediment must be above the water's: " + sedimentDensity + " kg/L");
    }
  }

  /**
   * mg/L = ppm·ρw / (1 − ppm·10⁻⁶·(1 − ρw/ρs)).
   *
   * <p>Derived from the volumes of water and grain adding up; with ρw = 1 it is the equation behind
   * the conversion tables of ASTM D3977 and USGS TWRI 5-C1. The equation is primary; a table is its
   * rounded form.
   *
   * @param partsPerMillion mass ratio, [0, 10⁶]; 10⁶ (no water) gives ρs·10⁶
   * @return mg/L
   * @throws IllegalArgumentException if out of range
   */
  public double toMilligramsPerLitre(double partsPerMillion) {
    Checked.within(partsPerMillion, 0, 1e6, "mass ratio in ppm");
    return partsPerMillion * waterDensity / (1 - partsPerMillion * 1e-6 * bracket());
  }

  /**
   * The inverse: ppm = C / (ρw + C·10⁻⁶·(1 − ρw/ρs)).
   *
   * @param milligramsPerLitre concentration, zero to ρs·10⁶
   * @return ppm by mass
   * @throws IllegalArgumentException if out of range
   */
  public double toPartsPerMillion(double milligramsPerLitre) {
    Checked.within(milligramsPerLitre, 0, sedimentDensity * 1e6, "concentration in mg/L");
    return milligramsPerLitre / (waterDensity + milligramsPerLitre * 1e-6 * bracket());
  }

  /** mg/L over ppm at this mass ratio: the factor a conversion table prints (for ρw = 1). */
  public double factor(double partsPerMillion) {
    Checked.within(partsPerMillion, 0, 1e6, "mass ratio in ppm");
    return waterDensity / (1 - partsPerMillion * 1e-6 * bracket());
  }

  private double bracket() {
    return 1 - waterDensity / sedimentDensity;
  }
}
