package org.siltbench.calc.method;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;

/**
 * How results are reported to people.
 *
 * @param digits significant figures at most, 1 to 9
 * @param limitResidue the residue that the reporting limit stands for: limit = residue / volume;
 *     null where the limit does not depend on the volume
 * @param limitMgPerL the lowest reporting limit whatever the volume, mg/L; 0 for none
 */
public record ReportRule(int digits, @Nullable Mass limitResidue, double limitMgPerL) {

  /**
   * The reporting limit in mg/L: the larger of {@code limitMgPerL} and limitResidue/volume.
   *
   * @param litres the filtered volume in L, above zero
   */
  public double limit(double litres) {
    return limitResidue == null
        ? limitMgPerL
        : Math.max(limitMgPerL, limitResidue.milligrams() / litres);
  }
}
