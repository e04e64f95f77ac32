package org.siltbench.calc.method;

import org.jspecify.annotations.Nullable;

/**
 * Duplicates.
 *
 * @param everySamples one pair per so many samples; 0 where none is asked for
 * @param limitPct the largest relative difference of a pair, % of its mean; null for no limit
 * @param lowFactor where the mean is under this many reporting limits, the difference is compared
 *     with one reporting limit instead; 0 to compare relatively always
 */
public record DuplicateRule(int everySamples, @Nullable Double limitPct, double lowFactor) {}
