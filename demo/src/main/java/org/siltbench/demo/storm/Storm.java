package org.siltbench.demo.storm;

import java.time.Duration;
import java.time.OffsetDateTime;

/**
 * The flood wave and its sediment: smooth functions of time, no chance in them. Sediment runs ahead
 * of the water, so that concentration over discharge draws a clockwise loop.
 *
 * @param start when the rain began
 */
public record Storm(OffsetDateTime start) {

  private static final double FLOW_RISE_MINUTES = 150;
  private static final double SEDIMENT_RISE_MINUTES = 105;

  /** Discharge, m³/s. */
  public double discharge(Site site, OffsetDateTime when) {
    return site.baseFlow() + site.peakFlow() * wave(minutes(site, when), FLOW_RISE_MINUTES);
  }

  /** Concentration of suspended sediment in the bottle, mg/L. */
  public double concentration(Site site, OffsetDateTime when) {
    double wave = wave(minutes(site, when), SEDIMENT_RISE_MINUTES);
    return site.baseConcentration() + site.peakConcentration() * Math.pow(wave, 1.6);
  }

  /** Gauge height, m: a power law of discharge, as many small streams have. */
  public double gaugeHeight(Site site, OffsetDateTime when) {
    return 0.35 * Math.pow(discharge(site, when), 0.45);
  }

  private double minutes(Site site, OffsetDateTime when) {
    return Duration.between(start, when).toSeconds() / 60.0 - site.lagMinutes();
  }

  /** Rises to one at the given time and falls slowly; zero before the start. */
  private static double wave(double minutes, double rise) {
    double x = minutes / rise;
    return x <= 0 ? 0 : Math.pow(x * Math.exp(1 - x), 2);
  }
}
