package org.siltbench.station.work.weigh;

import org.siltbench.balance.StableMass;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.calc.quantity.Mass;

/** How one load ended. */
public sealed interface PanOutcome {

  /** A stable mass, not yet recorded. */
  record Stable(StableMass stable, Mass zero) implements PanOutcome {}

  /** The detector does not take this load; it must come off. */
  record NotTaken(PanEvent.Reason reason, String why) implements PanOutcome {}
}
