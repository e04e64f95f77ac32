package org.siltbench.calc.result;

import org.siltbench.calc.stats.Checked;

/**
 * What a bench knows of its own balance: it takes the place of the method's {@code u_mass_mg}. All
 * zero or above.
 *
 * @param repeatabilityMg standard deviation of re-weighings, mg
 * @param repeatabilityDof its degrees of freedom, above zero
 * @param linearityMg largest deviation from linearity, mg (rectangular half width), of one weighing
 * @param eccentricityMg largest effect of the place on the pan at a filter's load, mg (rectangular
 *     half width), of one weighing
 * @param spanRelative relative standard uncertainty of the balance's span from its check weight,
 *     the same at pre- and post-weighing
 * @param driftRelative relative standard uncertainty of the change of span between pre- and
 *     post-weighing
 * @param airDensityChange standard uncertainty of the change of air density between pre- and
 *     post-weighing, kg/m³
 * @param filterDensity density of the filter, kg/m³, above zero
 */
public record BalanceRecord(
    double repeatabilityMg,
    double repeatabilityDof,
    double linearityMg,
    double eccentricityMg,
    double spanRelative,
    double driftRelative,
    double airDensityChange,
    double filterDensity) {

  /** Density that weights are adjusted to by convention, kg/m³ (OIML D 28). */
  private static final double WEIGHT_DENSITY = 8000;

  /**
   * @throws IllegalArgumentException if a number is out of range
   */
  public BalanceRecord {
    Checked.notNegative(repeatabilityMg, "repeatability");
    Checked.within(
        repeatabilityDof, Double.MIN_VALUE, Double.POSITIVE_INFINITY, "repeatability dof");
    Checked.notNegative(linearityMg, "linearity");
    Checked.notNegative(eccentricityMg, "eccentricity");
    Checked.notNegative(spanRelative, "span");
    Checked.notNegative(driftRelative, "drift");
    Checked.notNegative(airDensityChange, "air density change");
    Checked.positive(filterDensity, "filter density");
  }

  /** Buoyancy by the change of air density, relative to a mass: u(Δρ)·|1/ρ_f − 1/8000|. */
  double buoyancyRelative() {
    return airDensityChange * Math.abs(1 / filterDensity - 1 / WEIGHT_DENSITY);
  }
}
