package org.siltbench.station.work.load;

import java.time.Duration;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.load.LogBase;
import org.siltbench.station.Problem;

/**
 * What is asked of a load.
 *
 * @param site only this site; null for each that was sampled
 * @param from begin of the event; null for where discharge and samples both begin
 * @param to its end; null for where one of them ends
 * @param flowStep two discharges further apart leave a gap
 * @param sampleStep two samples further apart leave a gap
 * @param sharedRelative relative standard uncertainty common to all concentrations, as of one
 *     funnel
 * @param base of the logarithms of the rating curve
 */
public record LoadQuestion(
    @Nullable String site,
    @Nullable OffsetDateTime from,
    @Nullable OffsetDateTime to,
    Duration flowStep,
    Duration sampleStep,
    double sharedRelative,
    LogBase base) {

  /** Refuses steps of nothing, an end before its begin, and a share below zero. */
  public LoadQuestion {
    if (flowStep.isZero() || sampleStep.isZero()) {
      throw new Problem.WrongUse(LoadSays.NO_STEP);
    }
    if (from != null && to != null && !to.isAfter(from)) {
      throw new Problem.WrongUse(LoadSays.END_BEFORE);
    }
    if (!(sharedRelative >= 0 && sharedRelative < 1)) {
      throw new Problem.WrongUse(LoadSays.SHARED);
    }
  }
}
