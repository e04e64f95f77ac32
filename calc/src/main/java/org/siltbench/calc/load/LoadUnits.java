package org.siltbench.calc.load;

import org.siltbench.calc.stats.Checked;

/** Sediment load from discharge and concentration at one moment, and its units. */
public final class LoadUnits {

  /** Tonnes a day for 1 m³/s of 1 mg/L: 0.0864, exact. */
  public static final double TONNES_PER_DAY = 0.0864;

  /**
   * Short tons a day for 1 ft³/s of 1 mg/L, exact: 0.028316846592 m³ in a cubic foot, 907.18474 kg
   * in a short ton.
   */
  public static final double SHORT_TONS_PER_DAY = 0.0864 * 0.028316846592 / 0.90718474;

  /** The rounded factor of US practice, 0.0027 (Porterfield 1972), 0.11 % above the exact one. */
  public static final double SHORT_TONS_PER_DAY_ROUNDED = 0.0027;

  private static final double CUBIC_METRES_PER_CUBIC_FOOT = 0.028316846592;
  private static final double TONNES_PER_SHORT_TON = 0.90718474;

  private LoadUnits() {}

  /**
   * Load in t/day: 0.0864·Q·C.
   *
   * @param cubicMetresPerSecond discharge, finite; negative for flow upstream (tide)
   * @param milligramsPerLitre concentration, finite, signed
   * @throws IllegalArgumentException if a number is not finite
   */
  public static double tonnesPerDay(double cubicMetresPerSecond, double milligramsPerLitre) {
    return TONNES_PER_DAY
        * Checked.finite(cubicMetresPerSecond, "discharge in m³/s")
        * Checked.finite(milligramsPerLitre, "concentration in mg/L");
  }

  /**
   * Load in short tons a day: k·Q·C with the exact k.
   *
   * @param cubicFeetPerSecond discharge, finite
   * @param milligramsPerLitre concentration, finite
   * @throws IllegalArgumentException if a number is not finite
   */
  public static double shortTonsPerDay(double cubicFeetPerSecond, double milligramsPerLitre) {
    return SHORT_TONS_PER_DAY
        * Checked.finite(cubicFeetPerSecond, "discharge in ft³/s")
        * Checked.finite(milligramsPerLitre, "concentration in mg/L");
  }

  /** Cubic metres a second from cubic feet a second, exact factor. */
  public static double cubicMetres(double cubicFeet) {
    return cubicFeet * CUBIC_METRES_PER_CUBIC_FOOT;
  }

  /** Cubic feet from cubic metres. */
  public static double cubicFeet(double cubicMetres) {
    return cubicMetres / CUBIC_METRES_PER_CUBIC_FOOT;
  }

  /** Short tons from tonnes. */
  public static double shortTons(double tonnes) {
    return tonnes / TONNES_PER_SHORT_TON;
  }
}
