package org.siltbench.calc.detection;

import org.siltbench.calc.stats.Checked;

/**
 * The lowest concentration worth reporting for a method, a balance, a volume and the blanks.
 *
 * @param value mg/L
 * @param decidedBy which of the three asked for most
 */
public record ReportingLimit(double value, Decider decidedBy) {

  /** What a reporting limit can be decided by. */
  public enum Decider {
    /** The least residue the method accepts. */
    METHOD,
    /** Ten standard deviations of a residue on this balance. */
    BALANCE,
    /** Ten standard deviations of the blanks. */
    BLANK
  }

  /**
   * RL = max(least residue, 10·u(residue), 10·s(blank)) / V.
   *
   * <p>The factor of ten is Currie's determination limit (Anal. Chem. 40 (1968) 586-593): relative
   * standard deviation 10 %. A tie goes to the method, then to the balance.
   *
   * @param leastResidue the method's least residue, mg, zero or more (zero: none stated)
   * @param residueUncertainty standard uncertainty of a small residue on this balance, mg, zero or
   *     more; two readings of resolution d give at least d/√6
   * @param blankDeviation standard deviation of blank residues, mg, zero or more; zero for none
   * @param litres volume filtered, L, above zero
   * @throws IllegalArgumentException if a number is out of range
   */
  public static ReportingLimit of(
      double leastResidue, double residueUncertainty, double blankDeviation, double litres) {
    Checked.notNegative(leastResidue, "least residue in mg");
    double balance =
        CurrieLimits.DETERMINATION_FACTOR
            * Checked.notNegative(residueUncertainty, "u(residue) in mg");
    double blank =
        CurrieLimits.DETERMINATION_FACTOR
            * Checked.notNegative(blankDeviation, "deviation of the blanks in mg");
    Checked.positive(litres, "volume in L");
    double most = Math.max(leastResidue, Math.max(balance, blank));
    Decider by =
        most == leastResidue ? Decider.METHOD : most == balance ? Decider.BALANCE : Decider.BLANK;
    return new ReportingLimit(most / litres, by);
  }

  /**
   * What can be said of a result. The value itself is always kept.
   *
   * @param concentration mg/L, signed, finite
   * @param detectionLimit mg/L, zero or more
   * @throws IllegalArgumentException if a number is out of range
   */
  public Standing standing(double concentration, double detectionLimit) {
    Checked.finite(concentration, "concentration in mg/L");
    Checked.notNegative(detectionLimit, "detection limit in mg/L");
    if (concentration < detectionLimit) {
      return Standing.NOT_DETECTED;
    }
    return concentration < value ? Standing.BELOW_REPORTING_LIMIT : Standing.QUANTIFIED;
  }
}
