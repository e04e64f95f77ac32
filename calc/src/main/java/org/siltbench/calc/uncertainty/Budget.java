package org.siltbench.calc.uncertainty;

import java.util.List;
import org.siltbench.calc.stats.Checked;

/**
 * The uncertainty budget of one result, first order (JCGM 100:2008, 5.1.2 and 5.2.2):
 *
 * <p>u² = Σ (cᵢuᵢ)² + 2 Σᵢ&lt;ⱼ cᵢcⱼuᵢuⱼrᵢⱼ.
 *
 * <p>Effective degrees of freedom by Welch-Satterthwaite (G.4.1): ν = u⁴ / Σ (u_g)⁴/ν_g. The sum
 * runs over groups of parts tied by correlations, since the formula asks for independent terms: a
 * group's u_g is what it adds together, its ν_g the smallest within it. A part alone is its own
 * group.
 */
public final class Budget {

  private final double value;
  private final String unit;
  private final List<Part> parts;
  private final double[] variances;
  private final double variance;
  private final double dof;

  /**
   * A budget.
   *
   * @param value the result; signed
   * @param unit its unit, for people
   * @param parts the inputs; none gives u = 0
   * @param correlations between parts, by name; pairs not named are independent
   * @throws IllegalArgumentException if the value is not finite, two parts have the same name, a
   *     correlation names an unknown part, or the correlations contradict each other (a negative
   *     variance)
   */
  public Budget(double value, String unit, List<Part> parts, List<Correlation> correlations) {
    this.value = Checked.finite(value, "result");
    this.unit = unit;
    this.parts = List.copyOf(parts);
    Covariance covariance = new Covariance(this.parts, correlations);
    this.variances = covariance.rowSums();
    this.variance = covariance.total();
    this.dof = covariance.effectiveDof();
  }

  private Budget(double value, String unit, List<Part> parts, double[] variances) {
    this.value = Checked.finite(value, "result");
    this.unit = unit;
    this.parts = parts;
    this.variances = variances;
    double sum = 0;
    double fourths = 0;
    for (int i = 0; i < variances.length; i++) {
      sum += variances[i];
      fourths += variances[i] * variances[i] / parts.get(i).dof();
    }
    this.variance = sum;
    this.dof = fourths > 0 ? sum * sum / fourths : Double.POSITIVE_INFINITY;
  }

  /**
   * A budget of independent parts: the same figures without the matrix.
   *
   * @throws IllegalArgumentException if the value is not finite or two parts have the same name
   */
  public static Budget ofIndependent(double value, String unit, List<Part> parts) {
    List<Part> own = List.copyOf(parts);
    double[] variances = new double[own.size()];
    for (int i = 0; i < variances.length; i++) {
      Part part = own.get(i);
      for (int j = 0; j < i; j++) {
        if (own.get(j).name().equals(part.name())) {
          throw new IllegalArgumentException("two parts named " + part.name());
        }
      }
      variances[i] = part.contribution() * part.contribution();
    }
    return new Budget(value, unit, own, variances);
  }

  /** The result. */
  public double value() {
    return value;
  }

  /** The unit of the result. */
  public String unit() {
    return unit;
  }

  /** The inputs as given. */
  public List<Part> parts() {
    return parts;
  }

  /** The combined standard uncertainty, in the unit of the result; zero without parts. */
  public double u() {
    return Math.sqrt(variance);
  }

  /** Effective degrees of freedom; infinite when nothing uncertain has finite ones. */
  public double dof() {
    return dof;
  }

  /** The coverage factor under a coverage. */
  public double k(Coverage coverage) {
    return coverage.factor(dof);
  }

  /** The expanded uncertainty k·u, in the unit of the result. */
  public double expanded(Coverage coverage) {
    return k(coverage) * u();
  }

  /**
   * Each part's share of the variance, in the order of {@link #parts()}: cᵢuᵢ·Σⱼ rᵢⱼcⱼuⱼ / u². The
   * shares add up to 1; one can be negative where correlation cancels. All zero when u is zero.
   */
  public double[] shares() {
    double[] shares = new double[variances.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = variance > 0 ? variances[i] / variance : 0;
    }
    return shares;
  }
}
