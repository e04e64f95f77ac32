package org.siltbench.calc.montecarlo;

import org.siltbench.calc.stats.Checked;

/**
 * Concentration = residue / volume, where both are sums of parts: the first {@code residueParts}
 * inputs (mg) add up to the residue (a negative estimate for what is subtracted, as pre-mass and
 * blank), the rest (mL) to the volume. Output in mg/L.
 *
 * @param residueParts how many inputs make up the residue, at least 1
 * @param volumeParts how many make up the volume, at least 1
 */
public record ConcentrationModel(int residueParts, int volumeParts) implements Model {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is below 1
   */
  public ConcentrationModel {
    Checked.atLeast(residueParts, 1, "parts of the residue");
    Checked.atLeast(volumeParts, 1, "parts of the volume");
  }

  /** C = 1000·Σresidue/Σvolume; infinite or NaN for a volume of zero. */
  @Override
  public void evaluate(double[][] inputs, double[] outputs, int from, int count) {
    for (int i = 0; i < count; i++) {
      double residue = inputs[0][i];
      for (int j = 1; j < residueParts; j++) {
        residue += inputs[j][i];
      }
      double volume = inputs[residueParts][i];
      for (int j = residueParts + 1; j < residueParts + volumeParts; j++) {
        volume += inputs[j][i];
      }
      outputs[from + i] = 1000 * residue / volume;
    }
  }
}
