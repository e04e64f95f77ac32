package org.siltbench.calc.ignition;

import org.siltbench.calc.stats.Checked;

/**
 * A residue split by ignition at 550 °C into volatile and fixed solids. Volatile is not the same as
 * organic: carbonates and bound water may leave too.
 *
 * @param total suspended solids, mg
 * @param volatileSolids what left in the furnace, less the blank's own loss, mg, signed
 * @param fixed what stayed, mg: total − volatile
 * @param totalUncertainty u(total), mg
 * @param volatileUncertainty u(volatile), mg
 * @param fixedUncertainty u(fixed), mg
 * @param correlation r(volatile, fixed): negative, as the dried mass counts towards one and against
 *     the other
 */
public record IgnitionResult(
    double total,
    double volatileSolids,
    double fixed,
    double totalUncertainty,
    double volatileUncertainty,
    double fixedUncertainty,
    double correlation) {

  /**
   * The masses of one filter, mg, and the blank's.
   *
   * @param before filter before filtration, muffled
   * @param dried with residue, dried at 105 °C
   * @param ignited with residue, after 550 °C
   * @param blankGain what a blank filter gained from pre-weigh to drying, signed (0: not corrected)
   * @param blankLoss what a blank filter lost from drying to ignition, signed: its own blank
   */
  public record Masses(
      double before, double dried, double ignited, double blankGain, double blankLoss) {

    /**
     * Checks the masses.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public Masses {
      Checked.finite(before, "mass before filtration");
      Checked.finite(dried, "dried mass");
      Checked.finite(ignited, "ignited mass");
      Checked.finite(blankGain, "blank gain");
      Checked.finite(blankLoss, "blank loss on ignition");
    }
  }

  /**
   * total = dried − before − blankGain; volatile = dried − ignited − blankLoss; fixed = total −
   * volatile = ignited − before − blankGain + blankLoss. Source: SM 2540 E, with the blank's loss
   * taken off.
   *
   * <p>Uncertainties from independent weighings (u each) and the two blank terms, which the fixed
   * solids hold both; GUM 5.1.2. A volatile value below zero is kept signed.
   *
   * @param masses mg
   * @param weighing standard uncertainty of one weighing, mg, zero or more
   * @param blankGainUncertainty u(blankGain), mg, zero or more
   * @param blankLossUncertainty u(blankLoss), mg, zero or more
   * @throws IllegalArgumentException if an uncertainty is out of range
   */
  public static IgnitionResult of(
      Masses masses, double weighing, double blankGainUncertainty, double blankLossUncertainty) {
    double w = 2 * square(Checked.notNegative(weighing, "u(weighing)"));
    double g = square(Checked.notNegative(blankGainUncertainty, "u(blank gain)"));
    double b = square(Checked.notNegative(blankLossUncertainty, "u(blank loss)"));
    double total = masses.dried() - masses.before() - masses.blankGain();
    double gone = masses.dried() - masses.ignited() - masses.blankLoss();
    double uv = Math.sqrt(w + b);
    double uf = Math.sqrt(w + g + b);
    double covariance = -(w / 2 + b);
    double r = covariance == 0 ? 0 : covariance / (uv * uf);
    return new IgnitionResult(total, gone, total - gone, Math.sqrt(w + g), uv, uf, r);
  }

  /** Volatile over total, no unit; NaN if the total is not above zero. */
  public double volatileShare() {
    return total > 0 ? volatileSolids / total : Double.NaN;
  }

  private static double square(double x) {
    return x * x;
  }
}
