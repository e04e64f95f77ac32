package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.ignition.SandAndFines;

/**
 * What few results have beside a concentration.
 *
 * @param sandAndFines the sieve's two parts; null where they were not weighed apart
 * @param ignited volatile and fixed solids; null where there was no ignition or no volume
 * @param recovery a reference sample's; null where none was expected
 * @param partsPerMillion mass ratio of the mixture, ppm; NaN where it was not weighed
 * @param dissolvedMg dissolved solids taken off the sample's residue, mg; 0 for none
 */
public record Further(
    @Nullable SandAndFines sandAndFines,
    @Nullable Ignited ignited,
    @Nullable Recovery recovery,
    double partsPerMillion,
    double dissolvedMg) {}
