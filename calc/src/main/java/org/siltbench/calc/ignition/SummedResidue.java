package org.siltbench.calc.ignition;

import java.util.List;
import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.CompensatedSum;

/**
 * A sample weighed in several parts: over several filters, or sand and fines apart (ASTM D3977 test
 * method C, wet sieve and filter). What the parts share does not average out.
 *
 * @param residue sum of the parts less the shared blank from each, mg
 * @param uncertainty standard uncertainty of the sum, mg
 * @param independent the part of it from what each weighing has for itself, mg
 * @param blank the part from the shared blank, mg
 * @param scale the part from the shared balance and check weight, mg
 */
public record SummedResidue(
    double residue, double uncertainty, double independent, double blank, double scale) {

  /**
   * One part.
   *
   * @param residue post − pre before blank correction, mg, signed
   * @param uncertainty independent standard uncertainty of that difference, mg, zero or more
   * @param blankShare how often the shared blank is taken off this part: 1 for a filter, 0 for a
   *     dish that has no blank
   */
  public record Part(double residue, double uncertainty, double blankShare) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public Part {
      Checked.finite(residue, "residue of a part in mg");
      Checked.notNegative(uncertainty, "u of a part in mg");
      Checked.notNegative(blankShare, "share of the blank");
    }
  }

  /**
   * m = Σ(mᵢ − kᵢ·b); u² = Σu²(mᵢ) + (Σkᵢ)²·u²(b) + (Σmᵢ)²·u²(scale): the blank and the balance's
   * scale are the same for all parts, so their shares add before squaring. Source: GUM (JCGM
   * 100:2008) 5.2.2, F.1.2.3.
   *
   * @param parts at least one
   * @param blank the shared blank b, mg, signed; 0 where the method subtracts none
   * @param blankUncertainty u(b), mg, zero or more
   * @param scaleUncertainty relative standard uncertainty of the balance's scale, zero or more
   * @throws IllegalArgumentException if there is no part or a number is out of range
   */
  public static SummedResidue of(
      List<Part> parts, double blank, double blankUncertainty, double scaleUncertainty) {
    Checked.atLeast(parts.size(), 1, "number of parts");
    Checked.finite(blank, "blank in mg");
    Checked.notNegative(blankUncertainty, "u(blank) in mg");
    Checked.notNegative(scaleUncertainty, "relative u of the scale");
    double raw = CompensatedSum.of(parts.stream().mapToDouble(Part::residue).toArray());
    double times = CompensatedSum.of(parts.stream().mapToDouble(Part::blankShare).toArray());
    double own = 0;
    for (Part part : parts) {
      own = Math.hypot(own, part.uncertainty());
    }
    double ub = times * blankUncertainty;
    double us = Math.abs(raw) * scaleUncertainty;
    double u = Math.hypot(own, Math.hypot(ub, us));
    return new SummedResidue(raw - times * blank, u, own, ub, us);
  }
}
