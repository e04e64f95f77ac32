package org.siltbench.calc.highconc;

import org.siltbench.calc.stats.Checked;

/**
 * A whole bottle weighed full and empty: sediment and mixture by mass.
 *
 * @param sediment dry mass, g, zero or more
 * @param mixture mass of water and sediment, g, above the sediment's
 */
public record SampleByMass(double sediment, double mixture) {

  /**
   * Checks the masses.
   *
   * @throws IllegalArgumentException if one is out of range
   */
  public SampleByMass {
    Checked.positive(mixture, "mass of the mixture in g");
    Checked.within(sediment, 0, mixture, "mass of the sediment in g");
  }

  /** Mass ratio, ppm: sediment/mixture·10⁶. */
  public double partsPerMillion() {
    return sediment / mixture * 1e6;
  }

  /**
   * Volume of the mixture, mL: water at its own density plus the volume the grains take.
   *
   * @param densities of water and sediment
   */
  public double millilitres(MassRatio densities) {
    return (mixture - sediment) / densities.waterDensity() + sediment / densities.sedimentDensity();
  }

  /** Concentration, mg per litre of mixture: 10⁶·sediment/volume. */
  public double milligramsPerLitre(MassRatio densities) {
    return sediment / millilitres(densities) * 1e6;
  }
}
