package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.montecarlo.FirstOrderDoubt;
import org.siltbench.calc.montecarlo.Interval;
import org.siltbench.calc.stats.Quantiles;
import org.siltbench.calc.uncertainty.Budget;
import org.siltbench.calc.uncertainty.Part;

/** A concentration with its uncertainty; the budget is written out when it is asked for. */
public final class Concentration {

  private static final Cause[] CAUSES = Cause.values();
  private static final double ML_PER_L = 1000;

  private final Propagator propagator;
  private final double value;
  private final double litres;
  private final double[] parts;
  private final double u;
  private final double dof;
  private final @Nullable Interval interval;

  Concentration(
      Propagator propagator, double value, double litres, double[] parts, double u, double dof) {
    this(propagator, value, litres, parts, u, dof, null);
  }

  private Concentration(
      Propagator propagator,
      double value,
      double litres,
      double[] parts,
      double u,
      double dof,
      @Nullable Interval interval) {
    this.propagator = propagator;
    this.value = value;
    this.litres = litres;
    this.parts = parts;
    this.u = u;
    this.dof = dof;
    this.interval = interval;
  }

  Concentration with(Interval byDistributions) {
    return new Concentration(propagator, value, litres, parts, u, dof, byDistributions);
  }

  /** ∂C/∂x of a cause: 1/V for masses in mg, −C/V for volumes in mL, 1 for sub-sampling. */
  static double sensitivity(Cause cause, double value, double litres) {
    if (cause.isMass()) {
      return 1 / litres;
    }
    return cause.isVolume() ? -value / litres / ML_PER_L : 1;
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
    return u;
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
    return interval == null ? k() * u : interval.length() / 2;
  }

  /** The interval by distributions, mg/L; null where the first order was good enough. */
  public @Nullable Interval interval() {
    return interval;
  }

  /** Standard uncertainty of the net residue, mg. */
  public double residueU() {
    return root(Cause::isMass);
  }

  /** Standard uncertainty of the volume, mL. */
  public double volumeU() {
    return root(Cause::isVolume);
  }

  /** Standard uncertainty of one cause, in the cause's unit. */
  double u(Cause cause) {
    return parts[cause.place()];
  }

  /** Degrees of freedom of one cause; infinite where it is taken as known. */
  double dof(Cause cause) {
    return propagator.dof(cause);
  }

  private double root(Predicate<Cause> among) {
    double sum = 0;
    for (Cause cause : CAUSES) {
      double part = among.test(cause) ? parts[cause.place()] : 0;
      sum += part * part;
    }
    return Math.sqrt(sum);
  }

  /** Why the first order may not be trusted; empty where it may. */
  Set<FirstOrderDoubt> doubts() {
    return FirstOrderDoubt.of(value * litres, residueU(), litres * ML_PER_L, volumeU(), dof, 0);
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
    List<Part> list = new ArrayList<>();
    for (Cause cause : CAUSES) {
      int i = cause.place();
      if (parts[i] > 0) {
        double c = sensitivity(cause, value, litres);
        list.add(new Part(cause.title(), parts[i], cause.unit(), c, propagator.dof(cause)));
      }
    }
    return Budget.ofIndependent(value, "mg/L", list);
  }
}
