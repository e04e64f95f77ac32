package org.siltbench.calc.detection;

import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.Line;
import org.siltbench.calc.stats.NonCentralT;
import org.siltbench.calc.stats.Quantiles;

/**
 * Critical value and minimum detectable value of the net state variable from a linear calibration
 * with constant standard deviation (as recovered mass against mass of reference sediment given).
 *
 * @param critical x_C, in the unit of x
 * @param detectable x_D, in the unit of x
 * @param degreesOfFreedom of the residual deviation
 * @param nonCentrality δ(ν; α; β) used
 */
public record CalibrationLimits(
    double critical, double detectable, int degreesOfFreedom, double nonCentrality) {

  /**
   * x_C = t(1 − α; ν)·(σ̂/b̂)·√(1/K + 1/n + x̄²/s_xx) and x_D = δ(ν; α; β)·(same), where n = I·J
   * calibration points and K measurements of the actual state. Source: ISO 11843-2:2000, 5.2, 5.3.
   *
   * <p>Points exactly on a line: both 0.
   *
   * @param x values of the state variable given, at least 3, not all equal
   * @param y responses, as many
   * @param measurements K, at least 1
   * @param alpha (0, 0.5]
   * @param beta (0, 0.5]
   * @throws IllegalArgumentException if a number is out of range or the slope is not above zero
   */
  public static CalibrationLimits of(
      double[] x, double[] y, int measurements, double alpha, double beta) {
    Checked.atLeast(measurements, 1, "measurements of the actual state");
    Line line = Line.fit(x, y, 0);
    double slope = Checked.positive(line.slope(), "slope of the calibration");
    int nu = line.degreesOfFreedom();
    double unit =
        line.residualDeviation() / slope * Math.sqrt(1.0 / measurements + line.leverage(0));
    double delta = NonCentralT.nonCentrality(nu, alpha, beta);
    return new CalibrationLimits(Quantiles.student(1 - alpha, nu) * unit, delta * unit, nu, delta);
  }
}
