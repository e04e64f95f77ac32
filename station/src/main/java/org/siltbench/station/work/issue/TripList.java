package org.siltbench.station.work.issue;

import java.util.List;
import org.siltbench.station.life.About;
import org.siltbench.station.life.TripState;
import org.siltbench.station.register.RegisterView;

/** Finds trips. */
public final class TripList {

  private TripList() {}

  /** All trips, by name. */
  public static List<TripState> all(RegisterView register) {
    return register.list(About.TRIP, "", "").stream()
        .map(row -> row.subject().id())
        .flatMap(name -> TripState.fold(name, register.history(About.trip(name))).stream())
        .toList();
  }
}
