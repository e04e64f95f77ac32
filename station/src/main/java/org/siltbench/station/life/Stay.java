package org.siltbench.station.life;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * One filter's stay in a drying cycle.
 *
 * @param cycle the cycle's id
 * @param dish the dish it lay in, or empty
 * @param purpose pre, post or ignition
 * @param in when the oven was back in range with it
 * @param out when it left the oven
 * @param cooledUntil not to be weighed before
 * @param usefulUntil not to be weighed after
 * @param observed false where its times were stated afterwards
 * @param inRange false where the oven was seen outside the method's range
 */
public record Stay(
    String cycle,
    String dish,
    String purpose,
    OffsetDateTime in,
    Optional<OffsetDateTime> out,
    Optional<OffsetDateTime> cooledUntil,
    Optional<OffsetDateTime> usefulUntil,
    boolean observed,
    boolean inRange) {

  /** True while it is in the oven. */
  public boolean open() {
    return out.isEmpty();
  }

  /** True for the stay of a clean filter before its first masses. */
  public boolean pre() {
    return purpose.equals("pre");
  }
}
