package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.montecarlo.Comparison;
import org.siltbench.calc.montecarlo.FirstOrderDoubt;
import org.siltbench.calc.montecarlo.Interval;
import org.siltbench.calc.montecarlo.Propagation;
import org.siltbench.calc.stats.Quantiles;
import org.siltbench.calc.uncertainty.Budget;
import org.siltbench.calc.uncertainty.Part;

/** A concentration with its uncertainty; the budget is written out when it is asked for. */
public final class Concentration {

  private static final Cause[] CAUSES = Cause.values();

  /** Masses stand first in the list of causes, then volumes: where each of them ends. */
  private static final int MASSES = Cause.VOLUME.place();

  private static final int VOLUMES = Cause.SUBSAMPLING.place();
  private static final double ML_PER_L = 1000;
  private static final int COMPARED_DIGITS = 1;

  private final Propagator propagator;
  private final double value;
  private final double litres;
  private final double[] parts;
  private final double massFactor;
  private final double volumeFactor;
  private final double massVariance;
  private final double volumeVariance;
  private final double variance;
  private final double dof;
  private final @Nullable Interval interval;

  /**
   * Combines the parts: u² = u²(mass)/V² + (C/V)²·u²(volume) + u²(sub-sampling).
   *
   * @param parts squared standard uncertainty of each cause, in its unit, by its place
   */
  Concentration(Propagator propagator, double value, double litres, double[] parts) {
    this.propagator = propagator;
    this.value = value;
    this.litres = litres;
    this.parts = parts;
    this.massVariance = sum(parts, 0, MASSES);
    this.volumeVariance = sum(parts, MASSES, VOLUMES);
    double perMg = 1 / litres;
    double perMl = value * perMg / ML_PER_L;
    this.massFactor = perMg * perMg;
    this.volumeFactor = perMl * perMl;
    this.variance =
        massFactor * massVariance
            + volumeFactor * volumeVariance
            + sum(parts, VOLUMES, parts.length);
    this.dof = propagator.dof(massFactor, volumeFactor, parts, variance);
    this.interval = null;
  }

  private static double sum(double[] values, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += values[i];
    }
    return sum;
  }

  private Concentration(Concentration of, Interval interval) {
    this.propagator = of.propagator;
    this.value = of.value;
    this.litres = of.litres;
    this.parts = of.parts;
    this.massFactor = of.massFactor;
    this.volumeFactor = of.volumeFactor;
    this.massVariance = of.massVariance;
    this.volumeVariance = of.volumeVariance;
    this.variance = of.variance;
    this.dof = of.dof;
    this.interval = interval;
  }

  Concentration with(Interval byDistributions) {
    return new Concentration(this, byDistributions);
  }

  /** ∂C/∂x of a cause: 1/V for masses in mg, −C/V for volumes in mL, 1 for sub-sampling. */
  static double sensitivity(Cause cause, double value, double litres) {
    if (cause.isMass()) {
      return 1 / litres;
    }
    return cause.isVolume() ? -value / litres / ML_PER_L : 1;
  }

  /** (∂C/∂x)² of the cause at a place, from that of masses and that of volumes. */
  static double factor(int place, double massFactor, double volumeFactor) {
    return place < MASSES ? massFactor : place < VOLUMES ? volumeFactor : 1;
  }

  /** The concentration, mg/L; signed. */
  public double mgPerL() {
    return value;
  }

  /** The concentration, g/L. */
  public double gPerL() {
    return value / ML_PER_L;
  }

  /** The volume of the sample, L. */
  public double litres() {
    return litres;
  }

  /** The combined standard uncertainty, mg/L, first order. */
  public double u() {
    return Math.sqrt(variance);
  }

  /** Effective degrees of freedom; infinite where none of the parts has finite ones. */
  public double dof() {
    return dof;
  }

  /** The coverage factor. */
  public double k() {
    return propagator.coverage().factor(dof);
  }

  /**
   * The expanded uncertainty, mg/L: k·u, or half the interval where distributions were propagated.
   */
  public double expanded() {
    return interval == null ? k() * u() : interval.length() / 2;
  }

  /** The interval by distributions, mg/L; null where the first order was good enough. */
  public @Nullable Interval interval() {
    return interval;
  }

  /**
   * Both ways of propagation beside each other: the first order and 100 000 seeded trials.
   * Agreement is asked for to the first digit of u (JCGM 101:2008, 8.1): 100 000 trials cannot tell
   * more.
   *
   * @param name of the result; the seed is made from it, so that it is the same each time
   */
  public TwoWays bothWays(String name) {
    Interval trials = new ByDistributions().interval(this, ByDistributions.seed(name));
    double u = Math.max(u(), Double.MIN_NORMAL);
    return new TwoWays(
        Propagation.USUAL_TRIALS,
        trials,
        Comparison.of(value, k() * u(), u, trials, COMPARED_DIGITS));
  }

  /** Standard uncertainty of the net residue, mg. */
  public double residueU() {
    return Math.sqrt(massVariance);
  }

  /** Standard uncertainty of the volume, mL. */
  public double volumeU() {
    return Math.sqrt(volumeVariance);
  }

  /** Standard uncertainty of one cause, in the cause's unit. */
  double u(Cause cause) {
    return Math.sqrt(parts[cause.place()]);
  }

  /** Degrees of freedom of one cause; infinite where it is taken as known. */
  double dof(Cause cause) {
    return propagator.dof(cause);
  }

  /** Why the first order may not be trusted; empty where it may. */
  Set<FirstOrderDoubt> doubts() {
    return FirstOrderDoubt.of(value * litres, residueU(), litres * ML_PER_L, volumeU(), dof, 0);
  }

  /** False where there is certainly no doubt about the first order. */
  boolean mayBeDoubtful() {
    return FirstOrderDoubt.isPossible(volumeU() / (litres * ML_PER_L), dof);
  }

  /** The probability of coverage; where k is stated, what k means for a normal result. */
  double probability() {
    Double stated = propagator.coverage().probability();
    return stated == null
        ? 2 * Quantiles.normalProbability(propagator.coverage().factor(dof)) - 1
        : stated;
  }

  /** The budget: the parts that are not zero, in mg/L. */
  public Budget budget() {
    int count = 0;
    for (double part : parts) {
      count += part > 0 ? 1 : 0;
    }
    double[] variances = new double[count];
    int at = 0;
    for (int i = 0; i < parts.length; i++) {
      if (parts[i] > 0) {
        variances[at++] = factor(i, massFactor, volumeFactor) * parts[i];
      }
    }
    return Budget.ofIndependent(value, "mg/L", variances, dof, this::written);
  }

  private List<Part> written() {
    List<Part> list = new ArrayList<>();
    for (Cause cause : CAUSES) {
      double u = u(cause);
      if (u > 0) {
        double c = sensitivity(cause, value, litres);
        list.add(new Part(cause.title(), u, cause.unit(), c, propagator.dof(cause)));
      }
    }
    return list;
  }
}
