package org.siltbench.station.work.postweigh;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.correct.Reasons;

/**
 * How a post-weighing goes.
 *
 * @param balance which balance
 * @param expected the filters expected, or empty for any of the lab
 * @param goOn go on after a refusal
 * @param repeat the masses are for repeatability and do not count
 * @param both each bag's dish is asked for too
 * @param accept filters whose surprising mass is recorded all the same
 * @param reason why they are recorded all the same; may be empty if there are none
 * @param weight the check weight to open, bracket and close with; null to check apart
 * @param at the time of weighing as a person states it; null for the bench's clock
 */
public record PostWeighSettings(
    String balance,
    Optional<Set<String>> expected,
    boolean goOn,
    boolean repeat,
    boolean both,
    Set<String> accept,
    String reason,
    @Nullable CheckWeight weight,
    @Nullable OffsetDateTime at) {

  /** Copies the sets. */
  public PostWeighSettings {
    expected = expected.map(Set::copyOf);
    accept = Set.copyOf(accept);
    reason = accept.isEmpty() ? "" : Reasons.check(reason);
  }
}
