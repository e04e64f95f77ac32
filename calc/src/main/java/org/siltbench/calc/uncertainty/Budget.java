package org.siltbench.calc.uncertainty;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
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
  private final double[] variances;
  private final Supplier<List<Part>> written;
  private @Nullable List<Part> parts;
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
    List<Part> own = List.copyOf(parts);
    this.written = () -> own;
    Covariance covariance = new Covariance(own, correlations);
    this.variances = covariance.rowSums();
    this.variance = covariance.total();
    this.dof = covariance.effectiveDof();
  }

  private Budget(
      double value, String unit, double[] variances, double dof, Supplier<List<Part>> written) {
    this.value = Checked.finite(value, "result");
    this.unit = unit;
    this.variances = variances;
    this.dof = dof;
    this.written = written;
    double sum = 0;
    for (double part : variances) {
      sum += part;
    }
    this.variance = sum;
  }

  /**
   * A budget of independent parts: the same figures without the matrix.
   *
   * @throws IllegalArgumentException if the value is not finite or two parts have the same name
   */
  public static Budget ofIndependent(double value, String unit, List<Part> parts) {
    List<Part> own = List.copyOf(parts);
    double[] variances = new double[own.size()];
    double sum = 0;
    double fourths = 0;
    Set<String> names = new HashSet<>();
    for (int i = 0; i < variances.length; i++) {
      Part part = own.get(i);
      if (!names.add(part.name())) {
        throw new IllegalArgumentException("two parts named " + part.name());
      }
      variances[i] = part.contribution() * part.contribution();
      sum += variances[i];
      fourths += variances[i] * variances[i] / part.dof();
    }
    double dof = fourths > 0 ? sum * sum / fourths : Double.POSITIVE_INFINITY;
    return new Budget(value, unit, variances, dof, () -> own);
  }

  /**
   * The same from bare numbers, for many budgets of the same few causes: the parts are written out
   * when they are asked for.
   *
   * @param value the result, finite; signed
   * @param variances (cᵢuᵢ)² of each part, zero or more; not changed hereafter
   * @param dof effective degrees of freedom of the whole by the same formula, above zero; infinite
   *     where nothing uncertain has finite ones
   * @param parts writes the parts, as many, in the same order, each with a name of its own
   * @throws IllegalArgumentException if the value is not finite
   */
  public static Budget ofIndependent(
      double value, String unit, double[] variances, double dof, Supplier<List<Part>> parts) {
    return new Budget(value, unit, variances, dof, parts);
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
    List<Part> known = parts;
    if (known == null) {
      known = List.copyOf(written.get());
      parts = known;
    }
    return known;
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
    if (variance > 0) {
      for (int i = 0; i < shares.length; i++) {
        shares[i] = variances[i] / variance;
      }
    }
    return shares;
  }
}
