package org.siltbench.calc.method;

import org.jspecify.annotations.Nullable;

/**
 * What the method knows of uncertainty before a balance or a bottle says better. All are standard
 * uncertainties, zero or above.
 *
 * @param massMg of one weighing with all that belongs to it, mg
 * @param massDof degrees of freedom of {@code massMg}; infinite where it is an estimate
 * @param moistureMg of one weighing from moisture regain, mg
 * @param blankMg of a blank that is corrected for without blanks to tell its spread, mg
 * @param volumeReadingMl of one reading of a volume, mL
 * @param volumeCalibrationPct of the vessel's mark, the same for all its uses, % of the volume
 * @param volumeTemperaturePct from the temperature of vessel and water, % of the volume
 * @param subsamplingPct from taking an aliquot, % of the concentration
 * @param probability of coverage, within 0.5 to 1, where k comes from Student's t; null where k is
 *     stated
 * @param k the stated coverage factor, above zero; null where the probability is stated
 */
public record UncertaintyInputs(
    double massMg,
    double massDof,
    double moistureMg,
    double blankMg,
    double volumeReadingMl,
    double volumeCalibrationPct,
    double volumeTemperaturePct,
    double subsamplingPct,
    @Nullable Double probability,
    @Nullable Double k) {

  /**
   * @throws IllegalArgumentException unless exactly one of probability and k is set
   */
  public UncertaintyInputs {
    if ((probability == null) == (k == null)) {
      throw new IllegalArgumentException("state either a coverage probability or k");
    }
  }
}
