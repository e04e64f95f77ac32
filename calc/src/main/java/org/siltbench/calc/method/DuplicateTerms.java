package org.siltbench.calc.method;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.duplicates.DuplicateRule;

/**
 * Duplicates.
 *
 * @param everySamples one pair per so many samples; 0 where none is asked for
 * @param limitPct the largest relative difference of a pair, % of its mean; null for no limit
 * @param lowFactor where the mean is under this many reporting limits, the difference is compared
 *     with one reporting limit instead; 0 to compare relatively always
 */
public record DuplicateTerms(int everySamples, @Nullable Double limitPct, double lowFactor) {

  /**
   * The rule by which a pair is judged, reading the percentage as a limit for the difference; null
   * where the method has none.
   *
   * @param limitMgPerL the reporting limit in mg/L, zero or more
   */
  public @Nullable DuplicateRule rule(double limitMgPerL) {
    return limitPct == null
        ? null
        : new DuplicateRule(
            DuplicateRule.Reading.DIFFERENCE_WITHIN_PERCENT_OF_MEAN,
            limitPct,
            limitMgPerL,
            lowFactor,
            1);
  }
}
