package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.duplicates.DuplicateRule;
import org.siltbench.calc.flag.Flag;

/**
 * Two duplicates compared.
 *
 * @param pair the name they share
 * @param kind the kind of duplicate; may be empty
 * @param first the first's concentration, mg/L; NaN where it has none
 * @param second the second's; NaN where it has none or is missing
 * @param verdict the comparison; null where the method has no limit or they could not be compared
 * @param flag why not, or that they lie apart; null where all is well
 */
public record PairVerdict(
    String pair,
    String kind,
    double first,
    double second,
    DuplicateRule.@Nullable Verdict verdict,
    @Nullable Flag flag) {}
