package org.siltbench.station.work.issue;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.Names;

/**
 * One line of custody: bags or bottles change hands.
 *
 * @param trip the trip
 * @param relinquished who gave
 * @param received who took
 * @param time when; null for now
 * @param bags how many were counted
 * @param seals seal numbers or their state
 * @param temperatureC of the cool box
 */
public record Custody(
    String trip,
    String relinquished,
    String received,
    @Nullable OffsetDateTime time,
    int bags,
    @Nullable String seals,
    @Nullable BigDecimal temperatureC) {

  /** Refuses a transfer to nobody, or of less than nothing. */
  public Custody {
    trip = Names.check("trip", trip);
    relinquished = Names.check("person", relinquished);
    received = Names.check("person", received);
    if (bags < 0) {
      throw new Problem.WrongUse(IssueSays.FEWER_THAN_NONE);
    }
  }

  /** Records it. */
  public Entry record(Bench bench) {
    return bench
        .act(
            register -> {
              if (register.history(About.trip(trip)).isEmpty()) {
                throw new Problem.Refused(IssueSays.NO_TRIP, trip);
              }
              OffsetDateTime when = time == null ? OffsetDateTime.now(bench.clock()) : time;
              return List.of(
                  new Facts()
                      .put("trip", trip)
                      .put("relinquished", relinquished)
                      .put("received", received)
                      .put("time", Facts.time(when))
                      .put("bags", bags)
                      .putIf("seals", seals)
                      .putIf("temperature_c", temperatureC)
                      .put("observed", time == null)
                      .draft("custody"));
            })
        .get(0);
  }
}
