package org.siltbench.calc.montecarlo;

import java.util.EnumSet;
import java.util.Set;
import org.siltbench.calc.stats.Checked;

/**
 * Reasons to distrust the first-order uncertainty of a concentration (residue over volume) and to
 * propagate distributions.
 */
public enum FirstOrderDoubt {
  /** u(V)/V above 5 %: 1/V bends within the range of V. */
  VOLUME_UNCERTAIN,
  /** The volume may well be zero: V is under 4 u(V). No way of propagation helps. */
  VOLUME_NEAR_ZERO,
  /** Fewer than 5 effective degrees of freedom. */
  FEW_DEGREES_OF_FREEDOM,
  /**
   * One rectangular part makes up more than 90 % of the variance: the result is not near normal, so
   * U = k·u covers too much.
   */
  ONE_FLAT_PART_DOMINATES,
  /**
   * The product of the relative uncertainties of residue and volume counts against the first order:
   * a residue within 2 u of zero with a volume known to no better than 5 %.
   */
  RESIDUE_NEAR_ZERO;

  private static final double LARGE_RELATIVE = 0.05;
  private static final double FEW = 5;
  private static final double DOMINANT = 0.9;

  /**
   * The doubts there are; none means that the first order stands. The thresholds are this bench's
   * own: at each the ends of the 95 % interval move by about 5 % of U, half a unit in the second
   * digit of u. JCGM 101:2008 5.7, 5.8 and 8 give the principle, and {@link Comparison} decides in
   * the end.
   *
   * @param residue mg, signed
   * @param residueUncertainty u, mg, zero or more
   * @param volume any unit, above zero
   * @param volumeUncertainty same unit, zero or more
   * @param degreesOfFreedom effective, above zero; infinite allowed
   * @param largestFlatShare share of the largest rectangular part in the variance, [0, 1]
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Set<FirstOrderDoubt> of(
      double residue,
      double residueUncertainty,
      double volume,
      double volumeUncertainty,
      double degreesOfFreedom,
      double largestFlatShare) {
    Checked.finite(residue, "residue");
    Checked.notNegative(residueUncertainty, "u(residue)");
    Checked.positive(volume, "volume");
    Checked.notNegative(volumeUncertainty, "u(volume)");
    Checked.within(degreesOfFreedom, 0, Double.POSITIVE_INFINITY, "degrees of freedom");
    Checked.within(largestFlatShare, 0, 1, "share of the largest flat part");
    double relative = volumeUncertainty / volume;
    Set<FirstOrderDoubt> out = EnumSet.noneOf(FirstOrderDoubt.class);
    add(out, VOLUME_UNCERTAIN, relative > LARGE_RELATIVE);
    add(out, VOLUME_NEAR_ZERO, relative > 0.25);
    add(out, FEW_DEGREES_OF_FREEDOM, degreesOfFreedom < FEW);
    add(out, ONE_FLAT_PART_DOMINATES, largestFlatShare > DOMINANT);
    boolean nearZero = Math.abs(residue) < 2 * residueUncertainty;
    add(out, RESIDUE_NEAR_ZERO, nearZero && relative > LARGE_RELATIVE);
    return out;
  }

  /**
   * False where {@link #of} certainly finds no doubt of a result without a dominating flat part:
   * each of its other doubts needs a poorly known volume or few degrees of freedom.
   *
   * @param volumeRelative u(V)/V
   * @param degreesOfFreedom effective
   */
  public static boolean isPossible(double volumeRelative, double degreesOfFreedom) {
    return !(volumeRelative <= LARGE_RELATIVE && degreesOfFreedom >= FEW);
  }

  private static void add(Set<FirstOrderDoubt> to, FirstOrderDoubt doubt, boolean holds) {
    if (holds) {
      to.add(doubt);
    }
  }
}
