package org.siltbench.station.command.weigh;

import java.util.List;
import org.siltbench.calc.method.Method;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.work.preweigh.PrePlan;

/** Says where clean masses have not been shown to be constant, though the method asks for it. */
public final class ConstancyNote {

  private ConstancyNote() {}

  /** Tells the person, if there is something to tell. */
  public static void tell(Session session, Bench bench, List<FilterState> filters, Method method) {
    int unproven = PrePlan.unproven(bench.register(), filters, method).size();
    if (unproven > 0) {
      session.message(
          unproven
              + " clean masses are not tested for constant mass, as method "
              + method.key()
              + " asks. Dry, cool and weigh them again (or some of the lot):"
              + " siltbench dry start --purpose pre, then preweigh.");
    }
  }
}
