package org.siltbench.station.work.receipt;

import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.register.RegisterView;

/** Which trip a filter is on. */
final class Trips {

  private Trips() {}

  static String of(String filter, RegisterView register) {
    return Filters.find(register, filter).map(FilterState::trip).orElse("");
  }
}
