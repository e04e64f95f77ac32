package org.siltbench.station.life;

import java.time.OffsetDateTime;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.ledger.EntryRef;

/**
 * One recorded mass of a filter.
 *
 * @param ref the ledger entry
 * @param post whether the filter was loaded and dried
 * @param mass what the balance showed
 * @param digits the same with the displayed digits, grams
 * @param uMg standard uncertainty of the settled mean, mg; 0 where it is not known
 * @param resolutionMg smallest displayed step, mg; 0 where it is not known
 * @param moistureMg allowance for moisture taken up, mg
 * @param balance which balance
 * @param cycle the drying cycle before it, or empty
 * @param purpose why it was weighed: result, repeat, audit, lot
 * @param keyed typed in by hand, for good
 * @param pressed told by two presses of the balance's key, not watched, for good
 * @param observed false where it was stated afterwards, for good
 * @param at when it was weighed
 * @param by who weighed
 * @param verdict the word of the rule over the series that ends here, or empty
 */
public record Weighed(
    EntryRef ref,
    boolean post,
    Mass mass,
    String digits,
    double uMg,
    double resolutionMg,
    double moistureMg,
    String balance,
    String cycle,
    String purpose,
    boolean keyed,
    boolean pressed,
    boolean observed,
    OffsetDateTime at,
    String by,
    String verdict) {

  Weighed withVerdict(String other) {
    return new Weighed(
        ref,
        post,
        mass,
        digits,
        uMg,
        resolutionMg,
        moistureMg,
        balance,
        cycle,
        purpose,
        keyed,
        pressed,
        observed,
        at,
        by,
        other);
  }

  /** True for a mass that counts for the result: not a repeat, an audit or a lot test. */
  public boolean forResult() {
    return purpose.isEmpty() || purpose.equals("result");
  }
}
