package org.siltbench.station.work.today;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * Something that waits to be done.
 *
 * @param what the kind of work
 * @param batch the batch it is for, by name, or empty
 * @param count how many filters wait for it; 0 where it is not about filters
 * @param from not before, if that lies ahead
 * @param until not after, if there is a limit
 */
public record Due(
    What what,
    String batch,
    int count,
    Optional<OffsetDateTime> from,
    Optional<OffsetDateTime> until) {

  /** The kinds of work, in the order in which a day goes. */
  public enum What {
    /** No check weight has passed today. */
    CHECK,
    /** Loaded filters have cooled and go stale. */
    POST_WEIGH,
    /** Loaded filters cool in the desiccator. */
    COOLING,
    /** Filters are in the oven. */
    IN_OVEN,
    /** Returned filters wait for the oven. */
    DRY,
    /** Weighed, but not constant: the oven once more. */
    DRY_AGAIN,
    /** Clean filters need a mass. */
    PRE_WEIGH,
    /** Weighed clean filters wait for a trip. */
    ISSUE,
    /** Bags are out in the field. */
    RECEIVE,
    /** Constant filters wait for their results. */
    RESULTS
  }
}
