package org.siltbench.station.work.drying;

import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Life;
import org.siltbench.station.life.Role;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.Weighed;

/** Which filters a batch has for the oven. */
public final class Due {

  private Due() {}

  /** True if the filter should go into the oven next. */
  public static boolean isDue(FilterState state, Purpose purpose) {
    if (state.openStay().isPresent() || state.status() == Status.REJECTED) {
      return false;
    }
    return switch (purpose) {
      case PRE -> state.status() == Status.PLANNED || state.status() == Status.PRE_WEIGHED;
      case POST -> isDueLoaded(state);
      case IGNITION -> state.status() == Status.CONSTANT;
    };
  }

  private static boolean isDueLoaded(FilterState state) {
    return switch (state.status()) {
      case RECEIVED -> true;
      case PRE_WEIGHED -> Life.BENCH_ROLES.contains(state.role()) && state.role() != Role.SPARE;
      case POST_WEIGHED -> !state.postMass().map(Weighed::verdict).orElse("").equals("constant");
      default -> false;
    };
  }
}
