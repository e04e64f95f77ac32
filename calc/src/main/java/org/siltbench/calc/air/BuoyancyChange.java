package org.siltbench.calc.air;

import org.siltbench.calc.stats.Checked;

/**
 * What a change of air density between pre-weigh and post-weigh does to the difference of the two
 * masses. The filter itself is weighed twice in different air, so its buoyancy does not cancel.
 *
 * @param correction to be added to (post − pre), mg
 * @param uncertainty standard uncertainty of the correction, mg
 */
public record BuoyancyChange(double correction, double uncertainty) {

  /** Whether the balance was adjusted with its weight before each of the two weighings. */
  public enum Adjustment {
    /** Adjusted in the air of each weighing: the weight's own buoyancy counts too. */
    BEFORE_EACH_WEIGHING,
    /** Adjusted once for both. */
    ONCE
  }

  /**
   * The correction for a filter of mass m and density ρf when the air changes from ρ1 to ρ2:
   * m·(1/ρf − 1/8000)·(ρ2 − ρ1) for a balance adjusted before each weighing, m·(1/ρf)·(ρ2 − ρ1) for
   * one adjusted once. First order in ρ/ρf; the second order is below 10⁻³ of it.
   *
   * <p>u combines u(ρ2 − ρ1) (the two densities taken as independent) and u(ρf). Source: derived
   * from the weighing equation R = m·(1 − ρa/ρf)/(1 − ρa/8000); GUM 5.1.2.
   *
   * @param filterMass mg, zero or more
   * @param filterDensity of the fibre, not the bulk, kg/m³, above zero; borosilicate glass about
   *     2400, cellulose about 1500
   * @param filterDensityUncertainty u(ρf), kg/m³
   * @param before air at the pre-weigh
   * @param after air at the post-weigh
   * @param adjustment when the balance was adjusted
   * @throws IllegalArgumentException if a number is out of range
   */
  public static BuoyancyChange of(
      double filterMass,
      double filterDensity,
      double filterDensityUncertainty,
      AirDensity before,
      AirDensity after,
      Adjustment adjustment) {
    Checked.notNegative(filterMass, "filter mass in mg");
    Checked.positive(filterDensity, "filter density in kg/m³");
    Checked.notNegative(filterDensityUncertainty, "u(filter density)");
    double specific = 1 / filterDensity - offset(adjustment);
    double change = after.value() - before.value();
    double byAir = specific * Math.hypot(before.uncertainty(), after.uncertainty());
    double byDensity = change * filterDensityUncertainty / (filterDensity * filterDensity);
    return new BuoyancyChange(
        filterMass * specific * change, filterMass * Math.hypot(byAir, byDensity));
  }

  /**
   * The uncertainty when no correction is made because the air was not recorded: the correction is
   * zero and u = m·|1/ρf − 1/8000|·√2·u(ρ), with u(ρ) the spread of the air density from day to
   * day.
   *
   * @param filterMass mg, zero or more
   * @param filterDensity kg/m³, above zero
   * @param dayToDay standard deviation of the room's air density, kg/m³; about 0.01 to 0.02 where
   *     only the weather changes it (common practice)
   * @param adjustment when the balance was adjusted
   * @throws IllegalArgumentException if a number is out of range
   */
  public static BuoyancyChange uncorrected(
      double filterMass, double filterDensity, double dayToDay, Adjustment adjustment) {
    Checked.notNegative(filterMass, "filter mass in mg");
    Checked.positive(filterDensity, "filter density in kg/m³");
    Checked.notNegative(dayToDay, "spread of the air density");
    double specific = Math.abs(1 / filterDensity - offset(adjustment));
    return new BuoyancyChange(0, filterMass * specific * Math.sqrt(2) * dayToDay);
  }

  private static double offset(Adjustment adjustment) {
    return adjustment == Adjustment.ONCE ? 0 : 1 / Buoyancy.REFERENCE_WEIGHT_DENSITY;
  }
}
