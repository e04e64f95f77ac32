package org.siltbench.calc.load;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.siltbench.calc.reason.Unfit;
import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.CompensatedSum;

/**
 * The load of an event by integration of discharge times concentration. Gaps are left out and
 * stated, never filled.
 *
 * @param kilograms load over the covered time, kg
 * @param cubicMetres water over the covered time, m³
 * @param covered time covered
 * @param asked time asked for
 * @param gaps stretches left out, in order
 * @param weights ∂load/∂Cᵢ for each point of the concentration series, kg per mg/L; they add up to
 *     the water in 1000 m³
 */
public record EventLoad(
    double kilograms,
    double cubicMetres,
    Duration covered,
    Duration asked,
    List<Series.Gap> gaps,
    List<Double> weights) {

  /**
   * ∫Q·C dt with both linear between their own points, which Simpson's rule gives exactly on each
   * step of the joint times.
   *
   * @param discharge m³/s
   * @param concentration mg/L
   * @param from begin
   * @param to end, after the begin
   * @throws IllegalArgumentException if the end is not after the begin
   */
  public static EventLoad integrate(
      Series discharge, Series concentration, Instant from, Instant to) {
    if (!to.isAfter(from)) {
      throw new Unfit(SeriesSays.END_NOT_AFTER, to, from);
    }
    return new Integration(discharge, concentration).over(from, to);
  }

  /**
   * The event's load over the time both series cover; gaps within are stated.
   *
   * @param discharge m³/s
   * @param concentration mg/L
   * @throws IllegalArgumentException if the two share no time
   */
  public static EventLoad overCommonTime(Series discharge, Series concentration) {
    Instant from = Collections.max(List.of(discharge.first(), concentration.first()));
    Instant to = Collections.min(List.of(discharge.last(), concentration.last()));
    return integrate(discharge, concentration, from, to);
  }

  /**
   * Flow-weighted mean concentration, mg/L: load over water; NaN unless the water is above zero.
   */
  public double flowWeightedMean() {
    return cubicMetres > 0 ? kilograms * 1000 / cubicMetres : Double.NaN;
  }

  /** The load in tonnes. */
  public double tonnes() {
    return kilograms / 1000;
  }

  /** The share of the time asked for that is covered, [0, 1]. */
  public double coverage() {
    return covered.toNanos() / (double) asked.toNanos();
  }

  /**
   * Standard uncertainty of the load, kg, from the concentrations alone: independent parts add as
   * squares, the part all share (the same funnel, the same balance) adds plainly. u² = Σ(wᵢuᵢ)² +
   * (load·u_shared)². Source: GUM (JCGM 100:2008) 5.2.2. The discharge's own uncertainty and the
   * interpolation between samples are not in it.
   *
   * @param independent u(Cᵢ) of each concentration point in order of time, mg/L, zero or more
   * @param sharedRelative relative standard uncertainty common to all, zero or more
   * @throws IllegalArgumentException if their number differs or one is out of range
   */
  public double uncertainty(double[] independent, double sharedRelative) {
    double[] u = Checked.finite(independent, weights.size(), "uncertainties");
    if (u.length != weights.size()) {
      throw new IllegalArgumentException(u.length + " uncertainties for " + weights.size());
    }
    double own = 0;
    for (int i = 0; i < u.length; i++) {
      own = Math.hypot(own, weights.get(i) * Checked.notNegative(u[i], "uncertainty"));
    }
    return Math.hypot(own, kilograms * Checked.notNegative(sharedRelative, "shared part"));
  }

  /** One integration in progress. */
  private static final class Integration {
    private final Series discharge;
    private final Series concentration;
    private final CompensatedSum water = new CompensatedSum();
    private final double[] weights;
    private final List<Series.Gap> gaps = new ArrayList<>();
    private Duration covered = Duration.ZERO;

    Integration(Series discharge, Series concentration) {
      this.discharge = discharge;
      this.concentration = concentration;
      this.weights = new double[concentration.points().size()];
    }

    EventLoad over(Instant from, Instant to) {
      NavigableSet<Instant> times = new TreeSet<>(List.of(from, to));
      discharge.points().forEach(p -> times.add(p.at()));
      concentration.points().forEach(p -> times.add(p.at()));
      Instant left = from;
      for (Instant right : times.subSet(from, false, to, true)) {
        step(left, right);
        left = right;
      }
      return result(Duration.between(from, to));
    }

    private EventLoad result(Duration asked) {
      CompensatedSum load = new CompensatedSum();
      for (int i = 0; i < weights.length; i++) {
        load.add(weights[i] * concentration.points().get(i).value());
      }
      List<Double> w = Arrays.stream(weights).boxed().toList();
      return new EventLoad(load.value(), water.value(), covered, asked, List.copyOf(gaps), w);
    }

    private void step(Instant left, Instant right) {
      Instant middle = left.plus(Duration.between(left, right).dividedBy(2));
      if (Double.isNaN(discharge.at(middle)) || Double.isNaN(concentration.at(middle))) {
        gap(left, right);
        return;
      }
      double h = Series.seconds(left, right);
      double q1 = discharge.at(left);
      double q2 = discharge.at(right);
      covered = covered.plus(Duration.between(left, right));
      water.add(h * (q1 + q2) / 2);
      spread(left, right, h * (2 * q1 + q2) / 6, h * (q1 + 2 * q2) / 6);
    }

    private void gap(Instant left, Instant right) {
      int last = gaps.size() - 1;
      if (last >= 0 && gaps.get(last).to().equals(left)) {
        gaps.set(last, new Series.Gap(gaps.get(last).from(), right));
      } else {
        gaps.add(new Series.Gap(left, right));
      }
    }

    /** ∫Q·C dt = atLeft·C(left) + atRight·C(right), in m³·mg/L = g; shared out to the points. */
    private void spread(Instant left, Instant right, double atLeft, double atRight) {
      int i = concentration.indexAtOrBefore(left);
      Instant a = concentration.points().get(i).at();
      Instant b = concentration.points().get(i + 1).at();
      double span = Series.seconds(a, b);
      double fl = Series.seconds(a, left) / span;
      double fr = Series.seconds(a, right) / span;
      weights[i] += (atLeft * (1 - fl) + atRight * (1 - fr)) / 1000;
      weights[i + 1] += (atLeft * fl + atRight * fr) / 1000;
    }
  }
}
