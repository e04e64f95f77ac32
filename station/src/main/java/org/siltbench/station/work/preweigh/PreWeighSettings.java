package org.siltbench.station.work.preweigh;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.station.Problem;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.lot.MassWindow;

/**
 * How a pre-weighing goes.
 *
 * @param method the method in force
 * @param balance which balance
 * @param count most filters to weigh
 * @param repeatEvery after this many filters one is weighed again for repeatability; 0 for never
 * @param window the masses to take, instead of the lot's; null for the lot's
 * @param weight the check weight to open, bracket and close with; null to check apart
 */
public record PreWeighSettings(
    Method method,
    String balance,
    int count,
    int repeatEvery,
    @Nullable MassWindow window,
    @Nullable CheckWeight weight) {

  /** Refuses to weigh nothing. */
  public PreWeighSettings {
    if (count < 1) {
      throw new Problem.WrongUse(PreWeighSays.COUNT);
    }
    if (repeatEvery < 0) {
      throw new Problem.WrongUse(PreWeighSays.REPEAT);
    }
  }
}
