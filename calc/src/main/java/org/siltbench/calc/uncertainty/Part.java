package org.siltbench.calc.uncertainty;

/**
 * One input of an uncertainty budget.
 *
 * @param name what it is, as {@code repeatability}
 * @param u its standard uncertainty in its own unit, zero or above
 * @param unit that unit, for people
 * @param sensitivity the partial derivative of the result by this input, in result unit per {@code
 *     unit}; signed
 * @param dof degrees of freedom of {@code u}, above zero; infinite where it is taken as known
 */
public record Part(String name, double u, String unit, double sensitivity, double dof) {

  /**
   * @throws IllegalArgumentException if u is negative, NaN or infinite, the sensitivity is not
   *     finite, or dof is not above zero
   */
  public Part {
    if (!(u >= 0) || Double.isInfinite(u) || !Double.isFinite(sensitivity) || !(dof > 0)) {
      throw new IllegalArgumentException(
          "part " + name + ": u " + u + ", sensitivity " + sensitivity + ", dof " + dof);
    }
  }

  /** A part whose uncertainty is taken as known: dof infinite. */
  public static Part known(String name, double u, String unit, double sensitivity) {
    return new Part(name, u, unit, sensitivity, Double.POSITIVE_INFINITY);
  }

  /** Its signed contribution to the result, sensitivity · u, in the result's unit. */
  public double contribution() {
    return sensitivity * u;
  }
}
