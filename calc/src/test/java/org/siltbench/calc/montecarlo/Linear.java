package org.siltbench.calc.montecarlo;

import java.util.Arrays;
import java.util.List;

/**
 * The first order by another way than the budget's: sensitivities by differences of the model
 * itself. What the product works out by formulas is held against it.
 */
final class Linear {

  private Linear() {}

  /**
   * A first-order result.
   *
   * @param value the model at the best estimates
   * @param uncertainty combined standard uncertainty
   * @param degreesOfFreedom effective, by Welch-Satterthwaite; infinite if no input has few
   */
  record Result(double value, double uncertainty, double degreesOfFreedom) {}

  /**
   * u² = Σ(cᵢ·u(xᵢ))², cᵢ by central differences of ± u(xᵢ); ν = u⁴/Σ(cᵢu(xᵢ))⁴/νᵢ. For Student
   * inputs u is the scale, as in the GUM. Sources: GUM (JCGM 100:2008) 5.1.2, 5.1.3 note 2, G.4.1.
   *
   * @param inputs independent, at least one
   * @param model the model
   */
  static Result of(List<Input> inputs, Model model) {
    double[][] columns = columns(inputs);
    double[] y = new double[1 + 2 * inputs.size()];
    model.evaluate(columns, y, 0, y.length);
    double variance = 0;
    double fourth = 0;
    for (int j = 0; j < inputs.size(); j++) {
      double part = (y[1 + 2 * j] - y[2 + 2 * j]) / 2;
      variance += part * part;
      fourth += part * part * part * part / degreesOfFreedom(inputs.get(j).spread());
    }
    double nu = fourth > 0 ? variance * variance / fourth : Double.POSITIVE_INFINITY;
    return new Result(y[0], Math.sqrt(variance), nu);
  }

  /** Trial 0 holds the estimates; 1 + 2j and 2 + 2j move input j up and down by u. */
  private static double[][] columns(List<Input> inputs) {
    int n = inputs.size();
    double[][] columns = new double[n][1 + 2 * n];
    for (int j = 0; j < n; j++) {
      Arrays.fill(columns[j], inputs.get(j).value());
      double u = uncertainty(inputs.get(j).spread());
      columns[j][1 + 2 * j] += u;
      columns[j][2 + 2 * j] -= u;
    }
    return columns;
  }

  private static double uncertainty(Spread spread) {
    return spread instanceof Spread.Student student ? student.scale() : spread.standardDeviation();
  }

  private static double degreesOfFreedom(Spread spread) {
    return spread instanceof Spread.Student student
        ? student.degreesOfFreedom()
        : Double.POSITIVE_INFINITY;
  }
}
