package org.siltbench.calc.method;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Volume;

/**
 * The water.
 *
 * @param holdingDays the longest time from collection to filtration, days
 * @param minVolume the least volume that is believed for one filter
 * @param maxVolume the largest; more is taken for a slip of the unit
 * @param slowMinutes filtration slower than this asks for a larger filter or less water, minutes
 * @param batchSize samples in one analytical batch at most
 * @param bagDays the longest time from filtration, in the bag, to the oven, days; null for no rule
 * @param dissolvedFromPct dissolved solids that dried up are taken off where they are at least this
 *     share of the sediment, %; null for never
 * @param recoveryPct the recovery of a reference sample, %; null for no limits
 */
public record SampleRule(
    double holdingDays,
    Volume minVolume,
    Volume maxVolume,
    double slowMinutes,
    int batchSize,
    @Nullable Double bagDays,
    @Nullable Double dissolvedFromPct,
    @Nullable Span recoveryPct) {}
