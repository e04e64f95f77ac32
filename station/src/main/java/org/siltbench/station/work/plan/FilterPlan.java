package org.siltbench.station.work.plan;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import org.siltbench.calc.advice.BenchLimits;
import org.siltbench.calc.advice.FilterCount;
import org.siltbench.calc.advice.SamplingPlan;
import org.siltbench.calc.advice.StormAdvice;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.UncertaintyInputs;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.life.Role;
import org.siltbench.station.said.Words;

/**
 * What a trip asks for.
 *
 * @param samplesPerSite samples at each site
 * @param samples filters for samples, duplicates not counted
 * @param duplicates filters for duplicates
 * @param roles filters of every other role
 * @param total all filters
 * @param advice on volumes, in sentences; empty where no concentration is expected
 */
public record FilterPlan(
    int samplesPerSite,
    int samples,
    int duplicates,
    Map<Role, Integer> roles,
    int total,
    Words advice) {

  private static final int BLANK_EVERY = 20;

  /**
   * What is wanted.
   *
   * @param every time between samples
   * @param length how long each site is sampled
   * @param sites sites
   * @param trips trips
   * @param fieldBlankPct field blanks per 100 samples
   * @param duplicatePct duplicates per 100 samples
   * @param sparePct spares per 100 filters that go out
   * @param controls control filters that stay in the lab
   */
  public record Wish(
      Duration every,
      Duration length,
      int sites,
      int trips,
      double fieldBlankPct,
      double duplicatePct,
      double sparePct,
      int controls) {}

  /**
   * What is expected in the water.
   *
   * @param lowest lowest concentration, mg/L
   * @param highest highest concentration, mg/L
   * @param leastMl smallest volume that can be measured out, mL
   * @param mostMl largest volume, mL
   * @param targetPct relative standard uncertainty wanted, %
   */
  public record Water(
      double lowest, double highest, double leastMl, double mostMl, double targetPct) {}

  /** Copies the map. */
  public FilterPlan {
    roles = Map.copyOf(roles);
  }

  /** Counts the filters; no advice on volumes. */
  public static FilterPlan of(Wish wish) {
    SamplingPlan plan = plan(wish);
    FilterCount count = plan.filters();
    Map<Role, Integer> roles = new EnumMap<>(Role.class);
    roles.put(Role.FIELD_BLANK, count.fieldBlanks());
    roles.put(Role.TRIP_BLANK, count.tripBlanks());
    roles.put(Role.METHOD_BLANK, count.methodBlanks());
    roles.put(Role.CONTROL, count.controlFilters());
    roles.put(Role.SPARE, count.spares());
    return new FilterPlan(
        plan.samplesPerSite(),
        count.samples(),
        count.duplicates(),
        roles,
        count.total(),
        Words.none());
  }

  private static SamplingPlan plan(Wish wish) {
    try {
      return new SamplingPlan(
          wish.every(),
          wish.length(),
          wish.sites(),
          wish.trips(),
          wish.fieldBlankPct(),
          wish.duplicatePct(),
          wish.sparePct(),
          wish.controls(),
          BLANK_EVERY);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(PlanSays.NO_PLAN, Elsewhere.words(e));
    }
  }

  /** The same plan with advice on volumes under a method. */
  public FilterPlan advised(Method method, Water water) {
    try {
      StormAdvice storm =
          StormAdvice.of(
              limits(method, water), water.lowest(), water.highest(), water.targetPct() / 100);
      return new FilterPlan(
          samplesPerSite, samples, duplicates, roles, total, Elsewhere.words(storm.reason()));
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(PlanSays.NO_ADVICE, Elsewhere.words(e));
    }
  }

  private static BenchLimits limits(Method method, Water water) {
    UncertaintyInputs u = method.uncertainty();
    double residue = Math.hypot(Math.hypot(u.massMg(), u.moistureMg()) * Math.sqrt(2), u.blankMg());
    double relative = Math.hypot(u.volumeCalibrationPct(), u.volumeTemperaturePct()) / 100;
    return new BenchLimits(
        method.residue().min().milligrams(),
        method.residue().max().milligrams(),
        residue,
        u.volumeReadingMl(),
        relative,
        water.leastMl(),
        water.mostMl());
  }

  /** How many filters of a role; 0 for samples, which are counted apart. */
  public int of(Role role) {
    return roles.getOrDefault(role, 0);
  }
}
