package org.siltbench.balance.stable;

import org.siltbench.balance.Reading;
import org.siltbench.balance.StableMass;
import org.siltbench.calc.quantity.Mass;

/** What the stability detector thinks of the stream after the newest reading. */
public sealed interface Verdict {

  /** Not at rest yet, or not watched for long enough. */
  record Settling() implements Verdict {}

  /** The value shown is expected to stay; it may still be withdrawn. */
  record Provisional(Mass mass, String digits) implements Verdict {}

  /** Watched: the mass stands. */
  record Stable(StableMass mass) implements Verdict {}

  /**
   * At rest but for a steady gain.
   *
   * @param mgPerMin the rate, mg/min
   * @param gainMg rate x time out of the desiccator, mg
   * @param allowed whether the gain is within the method's allowance so far
   * @param atExitMg what a straight line says the mass was when it left the desiccator, mg: a
   *     diagnostic, never a result
   */
  record TakingUp(double mgPerMin, double gainMg, boolean allowed, double atExitMg)
      implements Verdict {}

  /** At rest but for a drift that is no moisture: a warm filter, static, creep. */
  record Drifting(double mgPerMin) implements Verdict {}

  /** A jump after the value had come to rest: touched, a door, a draught. */
  record Disturbed(String why) implements Verdict {}

  /** The balance shows no mass: over or under range, or a fault. */
  record OutOfRange(Reading.Kind kind, PanSays why) implements Verdict {}

  /** Nothing is known until readings come again. */
  record LinkLost() implements Verdict {}
}
