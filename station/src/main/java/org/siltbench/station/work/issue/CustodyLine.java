package org.siltbench.station.work.issue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.TripState;

/**
 * A transfer as it was recorded.
 *
 * @param time when
 * @param relinquished who gave
 * @param received who took
 * @param bags how many were counted
 * @param seals seals, or empty
 * @param temperatureC of the cool box, or empty
 */
public record CustodyLine(
    Optional<OffsetDateTime> time,
    String relinquished,
    String received,
    String bags,
    String seals,
    String temperatureC) {

  /** The transfers of a trip, oldest first. */
  public static List<CustodyLine> of(TripState trip) {
    return trip.custody().stream().map(CustodyLine::of).toList();
  }

  private static CustodyLine of(Fields data) {
    return new CustodyLine(
        data.time("time"),
        data.text("relinquished"),
        data.text("received"),
        data.text("bags"),
        data.text("seals"),
        data.text("temperature_c"));
  }
}
