package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.stats.Summary;

/**
 * What a blank filter itself loses from drying to ignition.
 *
 * @param milligrams the mean loss, mg, signed; 0 without blanks
 * @param u its standard uncertainty, mg
 * @param blanks how many blanks were ignited
 */
record IgnitionBlank(double milligrams, double u, long blanks) {

  /**
   * The mean of the blanks: u = s/√n, never less than weighing allows, u_w/√n; one blank has u_w.
   *
   * @param losses dried less ignited mass of each blank, mg; null for none
   * @param weighingU standard uncertainty of one such difference, mg
   */
  static IgnitionBlank of(@Nullable Summary losses, double weighingU) {
    if (losses == null) {
      return new IgnitionBlank(0, 0, 0);
    }
    double n = losses.n();
    double spread = n < 2 ? 0 : losses.deviation() / Math.sqrt(n);
    return new IgnitionBlank(losses.mean(), Math.max(spread, weighingU / Math.sqrt(n)), losses.n());
  }
}
