package org.siltbench.station.work.weigh;

import org.siltbench.balance.StableMass;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** How one load ended. */
public sealed interface PanOutcome {

  /**
   * A stable mass, not yet recorded.
   *
   * @param pressed true if it was told by two presses of the balance's key, not watched
   */
  record Stable(StableMass stable, Mass zero, boolean pressed) implements PanOutcome {

    /** A mass that was watched. */
    public Stable(StableMass stable, Mass zero) {
      this(stable, zero, false);
    }
  }

  /** Why a load was refused, in any language. */
  static Words why(PanEvent.Refused refused) {
    return Said.of(WeighSays.valueOf(refused.reason().name()), refused.why());
  }

  /** The detector does not take this load; it must come off. */
  record NotTaken(PanEvent.Reason reason, String why) implements PanOutcome {

    /** Why, in any language. */
    public Words words() {
      return PanOutcome.why(new PanEvent.Refused(reason, why));
    }
  }
}
