package org.siltbench.calc.air;

import org.siltbench.calc.stats.Checked;

/**
 * The air in the balance room.
 *
 * @param celsius temperature, °C, in [−50, 60]
 * @param hectopascals pressure at the balance (not reduced to sea level), hPa, in [300, 1200]
 * @param relativeHumidity in percent, [0, 100]
 */
public record AirState(double celsius, double hectopascals, double relativeHumidity) {

  /** 20 °C, 1013.25 hPa, 50 %. */
  public static final AirState REFERENCE = new AirState(20, 1013.25, 50);

  private static final double HECTOPASCALS_PER_MMHG = 1013.25 / 760;

  /**
   * Refuses what no balance room has: pressures typed in pascal, humidity as a fraction of more
   * than one hundred.
   *
   * @throws IllegalArgumentException if a number is out of its range or NaN
   */
  public AirState {
    Checked.within(celsius, -50, 60, "air temperature in °C");
    Checked.within(hectopascals, 300, 1200, "air pressure in hPa");
    Checked.within(relativeHumidity, 0, 100, "relative humidity in %");
  }

  /** A state with the pressure in millimetres of mercury; 760 mmHg = 1013.25 hPa. */
  public static AirState ofMillimetresMercury(
      double celsius, double millimetresMercury, double relativeHumidity) {
    return new AirState(celsius, millimetresMercury * HECTOPASCALS_PER_MMHG, relativeHumidity);
  }

  /** The pressure in millimetres of mercury. */
  public double millimetresMercury() {
    return hectopascals / HECTOPASCALS_PER_MMHG;
  }

  double kelvin() {
    return 273.15 + celsius;
  }

  AirState with(double t, double p, double h) {
    return new AirState(t, p, h);
  }
}
