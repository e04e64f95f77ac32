package org.siltbench.station.work.drying;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import org.siltbench.station.Problem;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Stay;

/** Whether a dried filter may be weighed now: out of the oven, cooled, not stale. */
public final class Cooled {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

  private Cooled() {}

  /**
   * The stay after which the filter may be weighed now.
   *
   * @param safe what the refusal says is safe
   * @throws Problem.Refused if it is too early or too late, with the time left
   */
  public static Stay require(FilterState state, OffsetDateTime now, String safe) {
    Stay stay = dried(state, safe);
    OffsetDateTime cooled = stay.cooledUntil().orElse(now);
    if (now.isBefore(cooled)) {
      long minutes = Duration.between(now, cooled).plusSeconds(59).toMinutes();
      throw new Problem.Refused(
          "Filter " + state.id() + " is still cooling: " + minutes + " min are left.",
          safe,
          "Leave it in the desiccator until " + cooled.format(CLOCK) + '.');
    }
    OffsetDateTime useful = stay.usefulUntil().orElse(now);
    if (now.isAfter(useful)) {
      throw new Problem.Refused(
          "Filter "
              + state.id()
              + " has gone stale: it should have been weighed by "
              + useful.format(CLOCK)
              + '.',
          safe,
          "Dry it again, let it cool, then weigh.");
    }
    return stay;
  }

  private static Stay dried(FilterState state, String safe) {
    Stay stay =
        state
            .lastStay()
            .orElseThrow(
                () ->
                    new Problem.Refused(
                        "Filter " + state.id() + " has not been dried.", safe, "Dry it first."));
    if (stay.open()) {
      throw new Problem.Refused(
          "Filter " + state.id() + " is still in drying cycle " + stay.cycle() + '.',
          safe,
          "End the cycle when it leaves the oven, let it cool, then weigh.");
    }
    return stay;
  }
}
