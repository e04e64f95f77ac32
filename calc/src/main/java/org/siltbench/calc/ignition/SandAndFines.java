package org.siltbench.calc.ignition;

import java.util.List;
import org.siltbench.calc.stats.Checked;

/**
 * Sand and fines of one sample, split on a sieve of 62 or 63 µm.
 *
 * @param sand mg/L
 * @param fines mg/L
 * @param total mg/L
 * @param totalUncertainty standard uncertainty of the total, mg/L
 * @param sandPercent sand in the total, %; NaN if the total is not above zero
 */
public record SandAndFines(
    double sand, double fines, double total, double totalUncertainty, double sandPercent) {

  /**
   * Both fractions over the volume of the whole sample; the total's uncertainty with the shared
   * blank, balance and volume. Source: ASTM D3977 test method C; GUM 5.2.2.
   *
   * @param sand the sand part
   * @param fines the fines part
   * @param blank shared blank, mg, signed
   * @param blankUncertainty u(blank), mg
   * @param scaleUncertainty relative u of the balance's scale
   * @param litres volume of the whole sample, L, above zero
   * @param litresUncertainty u(V), L, zero or more
   * @throws IllegalArgumentException if a number is out of range
   */
  public static SandAndFines of(
      SummedResidue.Part sand,
      SummedResidue.Part fines,
      double blank,
      double blankUncertainty,
      double scaleUncertainty,
      double litres,
      double litresUncertainty) {
    Checked.positive(litres, "volume in L");
    Checked.notNegative(litresUncertainty, "u(V) in L");
    SummedResidue sum =
        SummedResidue.of(List.of(sand, fines), blank, blankUncertainty, scaleUncertainty);
    double s = (sand.residue() - sand.blankShare() * blank) / litres;
    double f = (fines.residue() - fines.blankShare() * blank) / litres;
    double total = sum.residue() / litres;
    double u = Math.hypot(sum.uncertainty() / litres, total * litresUncertainty / litres);
    return new SandAndFines(s, f, total, u, total > 0 ? 100 * s / total : Double.NaN);
  }
}
