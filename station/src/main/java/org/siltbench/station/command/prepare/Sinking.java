package org.siltbench.station.command.prepare;

import org.siltbench.calc.highconc.Settling;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.station.Problem;

/**
 * How soon grains have sunk out of an aliquot's way: why it is drawn while the bottle is shaken.
 */
final class Sinking {

  private static final double QUARTZ = 2650;
  private static final double DEPTH_M = 0.1;
  private static final double MICROMETRE = 1e-6;

  private Sinking() {}

  /** One sentence about quartz grains of so many micrometres in water of 20 °C. */
  static String sentence(double micrometres) {
    if (!(micrometres > 0 && micrometres <= 2000)) {
      throw new Problem.WrongUse(
          ForPeople.value(micrometres, 4, 0) + " µm is no grain of sediment.",
          "Give its diameter in µm, as 62 for the finest sand.");
    }
    double diameter = micrometres * MICROMETRE;
    String grain = "Quartz grains of " + ForPeople.value(micrometres, 3, 0) + " µm";
    if (!Settling.AT_20_CELSIUS.stokesHolds(diameter, QUARTZ)) {
      return grain + " sink 10 cm within seconds: no aliquot holds them in their share.";
    }
    double seconds = DEPTH_M / Settling.AT_20_CELSIUS.stokes(diameter, QUARTZ);
    return grain
        + " sink 10 cm in "
        + (seconds < 600
            ? ForPeople.value(seconds, 2, 0) + " s"
            : ForPeople.value(seconds / 60, 2, 0) + " min")
        + " (Stokes, 20 °C): draw an aliquot while the bottle is shaken.";
  }
}
