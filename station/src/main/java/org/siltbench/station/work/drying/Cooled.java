package org.siltbench.station.work.drying;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import org.siltbench.station.Problem;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Stay;
import org.siltbench.station.said.Words;

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
  public static Stay require(FilterState state, OffsetDateTime now, Words safe) {
    Stay stay = dried(state, safe);
    OffsetDateTime cooled = stay.cooledUntil().orElse(now);
    if (now.isBefore(cooled)) {
      long minutes = Duration.between(now, cooled).plusSeconds(59).toMinutes();
      throw new Problem.Refused(
          DryingSays.COOLING, state.id(), minutes, cooled.format(CLOCK), safe);
    }
    OffsetDateTime useful = stay.usefulUntil().orElse(now);
    if (now.isAfter(useful)) {
      throw new Problem.Refused(DryingSays.STALE, state.id(), useful.format(CLOCK), safe);
    }
    return stay;
  }

  private static Stay dried(FilterState state, Words safe) {
    Stay stay =
        state
            .lastStay()
            .orElseThrow(() -> new Problem.Refused(DryingSays.NOT_DRIED, state.id(), safe));
    if (stay.open()) {
      throw new Problem.Refused(DryingSays.STILL_IN, state.id(), stay.cycle(), safe);
    }
    return stay;
  }
}
