package org.siltbench.calc.duplicates;

import org.siltbench.calc.stats.Checked;

/**
 * The rule a method judges duplicates by.
 *
 * @param reading how "agree within p % of their average" is read
 * @param percent p, above zero
 * @param reportingLimit RL, in the unit of the results, zero or more; zero turns the difference
 *     rule off
 * @param limitsBelow the mean below which, in reporting limits, the difference counts and not the
 *     percentage; 5 is usual
 * @param differenceInLimits the difference allowed there, in reporting limits; 1 is usual
 */
public record DuplicateRule(
    Reading reading,
    double percent,
    double reportingLimit,
    double limitsBelow,
    double differenceInLimits) {

  /**
   * The two readings of "duplicates agree within 5 % of their average weight" (SM 2540 D 3.c, 21st
   * edition).
   */
  public enum Reading {
    /** The two differ by no more than p % of the mean. The stricter one. */
    DIFFERENCE_WITHIN_PERCENT_OF_MEAN(1),
    /** Each lies within ± p % of the mean, so the two may differ by 2p %. */
    EACH_WITHIN_PERCENT_OF_MEAN(2);

    private final int timesPercent;

    Reading(int timesPercent) {
      this.timesPercent = timesPercent;
    }
  }

  /** Which part of the rule judged. */
  public enum Basis {
    /** The relative percent difference. */
    PERCENT,
    /** The plain difference, near the reporting limit. */
    DIFFERENCE
  }

  /**
   * A verdict.
   *
   * @param agrees true if value ≤ limit
   * @param basis which part judged
   * @param value what was judged: percent, or the unit of the results
   * @param limit what it may be at most, same unit
   */
  public record Verdict(boolean agrees, Basis basis, double value, double limit) {}

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is out of range
   */
  public DuplicateRule {
    Checked.positive(percent, "percent");
    Checked.notNegative(reportingLimit, "reporting limit");
    Checked.notNegative(limitsBelow, "reporting limits below which the difference counts");
    Checked.notNegative(differenceInLimits, "difference in reporting limits");
  }

  /** A rule by percentage only. */
  public static DuplicateRule ofPercent(Reading reading, double percent) {
    return new DuplicateRule(reading, percent, 0, 0, 0);
  }

  /**
   * Judges a pair: by the difference where the mean is under limitsBelow·RL, else by the
   * percentage. Limits are inclusive, to one part in 10¹².
   */
  public Verdict judge(DuplicatePair pair) {
    if (pair.mean() < limitsBelow * reportingLimit) {
      double limit = differenceInLimits * reportingLimit;
      return verdict(Basis.DIFFERENCE, pair.difference(), limit);
    }
    double limit = reading.timesPercent * percent;
    return verdict(Basis.PERCENT, pair.relativePercentDifference(), limit);
  }

  private static Verdict verdict(Basis basis, double value, double limit) {
    return new Verdict(value <= limit * (1 + 1e-12), basis, value, limit);
  }
}
