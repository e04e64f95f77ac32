package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankCorrection;
import org.siltbench.calc.blank.BlankKind;
import org.siltbench.calc.detection.CurrieLimits;
import org.siltbench.calc.detection.MethodDetectionLimit;
import org.siltbench.calc.detection.Standing;
import org.siltbench.calc.stats.Summary;

/**
 * What the blanks of a batch say of the least that can be told from nothing.
 *
 * @param kind the kind of blanks, the one the method counts
 * @param detection the method detection limit, as a residue in mg
 * @param currie critical level, detection and determination limit of a net residue, mg, for the
 *     deviation estimated from these blanks
 */
public record BlankLimits(BlankKind kind, MethodDetectionLimit detection, CurrieLimits currie) {

  private static final double ERROR = 0.05;

  /**
   * The limits of a batch: MDLb = x̄ + t·s of the residues (40 CFR 136 App. B, rev. 2), without x̄
   * where the mean blank is subtracted; L_C, L_D and L_Q with α = β = 0.05 (Currie 1995) for σ0 =
   * s·√(1 + 1/n) where a mean of n blanks is subtracted, else s.
   *
   * @return null with fewer than 7 blanks of the kind the method counts
   */
  public static @Nullable BlankLimits of(BatchReport report) {
    BlankKind kind = report.method().blank().kind();
    Summary blanks = report.blanks().summary(kind);
    if (blanks == null || blanks.n() < MethodDetectionLimit.FEWEST) {
      return null;
    }
    BlankCorrection correction = report.correction();
    boolean corrected = correction.blanks() > 0;
    double s0 =
        corrected
            ? CurrieLimits.deviationAtZero(blanks.deviation(), (int) blanks.n())
            : blanks.deviation();
    return new BlankLimits(
        kind,
        MethodDetectionLimit.ofBlanks(blanks, corrected),
        CurrieLimits.estimated(s0, blanks.n() - 1.0, ERROR, ERROR));
  }

  /**
   * The detection limit of a sample, mg/L: the residue's limit for each of its filters over its
   * volume.
   *
   * @param filters 1 or more
   * @param litres above zero
   */
  public double mgPerL(int filters, double litres) {
    return filters * detection.limit() / litres;
  }

  /** How a result stands; the value itself is always kept. */
  public Standing standing(Concentration c, int filters, double reportingLimit) {
    if (c.mgPerL() < mgPerL(filters, c.litres())) {
      return Standing.NOT_DETECTED;
    }
    return c.mgPerL() < reportingLimit ? Standing.BELOW_REPORTING_LIMIT : Standing.QUANTIFIED;
  }
}
