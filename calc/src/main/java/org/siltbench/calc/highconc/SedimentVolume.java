package org.siltbench.calc.highconc;

import org.siltbench.calc.stats.Checked;

/** The volume the sediment itself takes where the volume known is the water's (the filtrate's). */
public final class SedimentVolume {

  private SedimentVolume() {}

  /**
   * Concentration per litre of mixture from a volume of filtrate: C = m/(V + m/ρs).
   *
   * <p>At 2.65 kg/L the difference is 1 % at 26 500 mg per litre of filtrate.
   *
   * @param milligrams residue, mg; a negative one (clear water) takes no volume
   * @param filtrateLitres volume of water that passed, L, above zero
   * @param sedimentDensity kg/L, above zero
   * @return mg/L
   * @throws IllegalArgumentException if a number is out of range
   */
  public static double concentration(
      double milligrams, double filtrateLitres, double sedimentDensity) {
    Checked.finite(milligrams, "residue in mg");
    Checked.positive(filtrateLitres, "volume of filtrate in L");
    return milligrams / (filtrateLitres + litres(Math.max(0, milligrams), sedimentDensity));
  }

  /**
   * The volume of so much sediment, L: m/ρs.
   *
   * @param milligrams zero or more
   * @param sedimentDensity kg/L, above zero
   * @throws IllegalArgumentException if a number is out of range
   */
  public static double litres(double milligrams, double sedimentDensity) {
    Checked.notNegative(milligrams, "sediment in mg");
    return milligrams / (Checked.positive(sedimentDensity, "density of sediment in kg/L") * 1e6);
  }
}
