package org.siltbench.station.work.load;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.load.BiasCorrection;
import org.siltbench.calc.load.DischargeLoop;
import org.siltbench.calc.load.EventLoad;
import org.siltbench.calc.load.RatingCurve;
import org.siltbench.station.said.Words;

/**
 * What passed one site.
 *
 * @param site its name; empty where none was given
 * @param from begin
 * @param to end
 * @param load the event by integration
 * @param uncertainty standard uncertainty of the load from the concentrations alone, kg; NaN where
 *     one of them has none
 * @param moments the load at each sample
 * @param loop concentration against discharge
 * @param rating the curve in logarithms; null where it cannot be fitted
 * @param notes what to know, in any language
 */
public record SiteLoad(
    String site,
    Instant from,
    Instant to,
    EventLoad load,
    double uncertainty,
    List<Moment> moments,
    DischargeLoop loop,
    @Nullable Rating rating,
    List<Words> notes) {

  /** Copies the lists. */
  public SiteLoad {
    moments = List.copyOf(moments);
    notes = List.copyOf(notes);
  }

  /**
   * The load at a sample.
   *
   * @param sample the sample, or the two of a pair
   * @param at when
   * @param discharge m³/s; NaN in a gap
   * @param mgPerL mg/L
   * @param tonnesPerDay NaN in a gap
   */
  public record Moment(
      String sample, Instant at, double discharge, double mgPerL, double tonnesPerDay) {}

  /**
   * A curve and what it makes of the same time.
   *
   * @param curve concentration from discharge
   * @param points samples it was fitted to
   * @param kilograms the load under each correction, kg
   * @param covered the share of the time it covers
   * @param extrapolated discharges of the event outside what was fitted
   */
  public record Rating(
      RatingCurve curve,
      int points,
      Map<BiasCorrection, Double> kilograms,
      double covered,
      int extrapolated) {}
}
