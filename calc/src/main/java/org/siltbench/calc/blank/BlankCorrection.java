package org.siltbench.calc.blank;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.stats.Summary;

/**
 * What is subtracted from each filter's residue.
 *
 * @param milligrams the correction, mg, signed; 0 where the method does not subtract
 * @param u its standard uncertainty, mg
 * @param dof degrees of freedom of {@code u}
 * @param blanks how many blanks it rests on
 */
public record BlankCorrection(double milligrams, double u, double dof, long blanks) {

  /** No correction. */
  public static final BlankCorrection NONE = new BlankCorrection(0, 0, Double.POSITIVE_INFINITY, 0);

  /**
   * The mean blank of the method's kind, where the method subtracts.
   *
   * <p>u = s/√n with n − 1 degrees of freedom. Where the blanks agree better than weighing allows
   * (all equal, say), u = u_w/√n with infinite degrees of freedom: a spread smaller than that is
   * luck. One blank: u = u_w. None: nothing is subtracted and u is the method's {@code u_blank_mg}.
   * The method's {@code u_blank_mg} is the floor in each case.
   *
   * @param weighingU standard uncertainty of one residue (a difference of two weighings), mg
   * @param methodU the method's own figure for a blank, mg; 0 for none
   */
  public static BlankCorrection of(BlankTally tally, double weighingU, double methodU) {
    if (tally.rule().use() != BlankRule.Use.SUBTRACT) {
      return NONE;
    }
    Summary summary = tally.summary(tally.rule().kind());
    return summary == null
        ? new BlankCorrection(0, methodU, Double.POSITIVE_INFINITY, 0)
        : of(summary, weighingU, methodU);
  }

  private static BlankCorrection of(Summary summary, double weighingU, double methodU) {
    double n = summary.n();
    double floor = Math.max(weighingU / Math.sqrt(n), methodU);
    double spread = n < 2 ? 0 : summary.deviation() / Math.sqrt(n);
    return spread > floor
        ? new BlankCorrection(summary.mean(), spread, n - 1, summary.n())
        : new BlankCorrection(summary.mean(), floor, Double.POSITIVE_INFINITY, summary.n());
  }

  /** True when the method would subtract and has nothing to subtract. */
  public static boolean isMissing(BlankTally tally) {
    return tally.rule().use() == BlankRule.Use.SUBTRACT && tally.count(tally.rule().kind()) == 0;
  }

  /** The kind of blank a role of a filter is, by its word; null for what is no blank. */
  public static @Nullable BlankKind kindOf(String role) {
    for (BlankKind kind : BlankKind.values()) {
      if (kind != BlankKind.LOT_LOSS && kind.word().equals(role)) {
        return kind;
      }
    }
    return null;
  }
}
