package org.siltbench.station.work.load;

import java.time.Instant;

/**
 * A concentration at a site and a moment.
 *
 * @param site where, or empty
 * @param sample the sample's name
 * @param at when it was collected
 * @param mgPerL concentration, mg/L
 * @param u its standard uncertainty, mg/L; NaN where it is not known
 * @param pair the name of its pair of duplicates, or empty
 */
public record Sampled(
    String site, String sample, Instant at, double mgPerL, double u, String pair) {}
