package org.siltbench.calc.method;

import org.siltbench.calc.quantity.Volume;

/**
 * The water.
 *
 * @param holdingDays the longest time from collection to filtration, days
 * @param minVolume the least volume that is believed for one filter
 * @param maxVolume the largest; more is taken for a slip of the unit
 * @param slowMinutes filtration slower than this asks for a larger filter or less water, minutes
 * @param batchSize samples in one analytical batch at most
 */
public record SampleRule(
    double holdingDays, Volume minVolume, Volume maxVolume, double slowMinutes, int batchSize) {}
