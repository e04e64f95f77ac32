package org.siltbench.calc.highconc;

import org.siltbench.calc.stats.Checked;

/**
 * The dissolved solids that dried with the sediment, to be taken off the residue.
 *
 * @param milligrams what to subtract, mg
 * @param uncertainty its standard uncertainty, mg
 * @param shareOfSediment what is subtracted over what remains, no unit; infinite if nothing remains
 */
public record DissolvedSolids(double milligrams, double uncertainty, double shareOfSediment) {

  /**
   * The share from which ASTM D3977 section 1.4 asks method A for the correction (about 10 % of the
   * sediment).
   */
  public static final double ASTM_SHARE = 0.10;

  /**
   * Correction = TDS · volume of water that dried up with the sediment: the whole water of the dish
   * in the evaporation method (ASTM D3977 test method A), or only the water the filter held back
   * and that was not rinsed out.
   *
   * @param residue dry mass before the correction, mg, finite
   * @param dissolved TDS, mg/L, zero or more
   * @param dissolvedUncertainty u(TDS), mg/L, zero or more
   * @param driedLitres volume of that water, L, zero or more
   * @param driedUncertainty u of that volume, L, zero or more
   * @throws IllegalArgumentException if a number is out of range
   */
  public static DissolvedSolids of(
      double residue,
      double dissolved,
      double dissolvedUncertainty,
      double driedLitres,
      double driedUncertainty) {
    Checked.finite(residue, "residue in mg");
    Checked.notNegative(dissolved, "dissolved solids in mg/L");
    Checked.notNegative(dissolvedUncertainty, "u(dissolved solids)");
    Checked.notNegative(driedLitres, "volume of water dried in L");
    Checked.notNegative(driedUncertainty, "u(volume of water dried)");
    double mg = dissolved * driedLitres;
    double u = Math.hypot(driedLitres * dissolvedUncertainty, dissolved * driedUncertainty);
    double rest = residue - mg;
    return new DissolvedSolids(mg, u, rest > 0 ? mg / rest : share(mg));
  }

  private static double share(double milligrams) {
    return milligrams == 0 ? 0 : Double.POSITIVE_INFINITY;
  }

  /** True if ASTM D3977 A asks for the correction: the share is above about 10 %. */
  public boolean neededByAstm() {
    return shareOfSediment > ASTM_SHARE;
  }
}
