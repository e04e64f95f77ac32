package org.siltbench.calc.result;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankCorrection;
import org.siltbench.calc.method.UncertaintyInputs;
import org.siltbench.calc.uncertainty.Coverage;

/**
 * Computes concentrations and their first-order uncertainty under one method, balance and blank.
 *
 * <p>C = (R − n·B)/V with R the sum of the residues in mg, n filters, B the blank in mg, V the sum
 * of the volumes in L. Sensitivities: 1/V for masses, −C/V for volumes, 1 for sub-sampling.
 */
final class Propagator {

  private static final double PER_CENT = 0.01;
  private static final double THREE = 3;
  private static final Cause[] CAUSES = Cause.values();

  private final UncertaintyInputs inputs;
  private final @Nullable BalanceRecord balance;
  private final BlankCorrection blank;
  private final Coverage coverage;
  private final double[] dofs = new double[CAUSES.length];
  private final boolean finite;

  Propagator(UncertaintyInputs inputs, @Nullable BalanceRecord balance, BlankCorrection blank) {
    this.inputs = inputs;
    this.balance = balance;
    this.blank = blank;
    this.coverage = coverage(inputs);
    Arrays.fill(dofs, Double.POSITIVE_INFINITY);
    dofs[Cause.WEIGHING.place()] = inputs.massDof();
    if (balance != null) {
      dofs[Cause.REPEATABILITY.place()] = balance.repeatabilityDof();
    }
    dofs[Cause.BLANK.place()] = blank.dof();
    this.finite = Arrays.stream(dofs).anyMatch(dof -> !Double.isInfinite(dof));
  }

  private static Coverage coverage(UncertaintyInputs inputs) {
    Double probability = inputs.probability();
    Double k = inputs.k();
    return probability != null
        ? Coverage.ofProbability(probability)
        : Coverage.ofFactor(k == null ? 2 : k);
  }

  Coverage coverage() {
    return coverage;
  }

  BlankCorrection blank() {
    return blank;
  }

  /** Degrees of freedom of a cause. */
  double dof(Cause cause) {
    return dofs[cause.place()];
  }

  /** Degrees of freedom of the cause at a place. */
  double dof(int place) {
    return dofs[place];
  }

  /** The concentration of a sample whose volume is known and above zero. */
  Concentration concentration(SampleSums sums) {
    double litres = sums.litres();
    double net = sums.residueMg() - sums.blankShares() * blank.milligrams();
    double value = net / litres;
    double[] u = new double[CAUSES.length];
    masses(u, sums, net);
    volumes(u, sums);
    u[Cause.SUBSAMPLING.place()] = inputs.subsamplingPct() * PER_CENT * Math.abs(value);
    return new Concentration(this, value, litres, u);
  }

  private void masses(double[] u, SampleSums sums, double net) {
    if (balance == null) {
      u[Cause.WEIGHING.place()] = Math.sqrt(sums.weighingVariance());
    } else {
      balance(u, balance, sums, net);
    }
    u[Cause.MOISTURE.place()] = inputs.moistureMg() * Math.sqrt(sums.weighings());
    u[Cause.BLANK.place()] = sums.blankShares() * blank.u();
    u[Cause.DISSOLVED.place()] = Math.sqrt(sums.dissolvedVariance());
  }

  private static void balance(double[] u, BalanceRecord record, SampleSums sums, double net) {
    double independent = Math.sqrt(sums.weighings());
    double flat = independent / Math.sqrt(THREE);
    u[Cause.REPEATABILITY.place()] = record.repeatabilityMg() * independent;
    u[Cause.RESOLUTION.place()] = Math.sqrt(sums.resolutionVariance());
    u[Cause.LINEARITY.place()] = record.linearityMg() * flat;
    u[Cause.ECCENTRICITY.place()] = record.eccentricityMg() * flat;
    u[Cause.CHECK_WEIGHT.place()] = record.spanRelative() * Math.abs(net);
    u[Cause.DRIFT.place()] = record.driftRelative() * Math.abs(sums.postMg());
    u[Cause.BUOYANCY.place()] = record.buoyancyRelative() * Math.abs(sums.postMg());
  }

  /** Standard uncertainty of one weighing on this balance, or as the method states it, mg. */
  double oneWeighing(SampleSums sums) {
    double times = sums.weighings();
    if (balance == null) {
      return Math.hypot(Math.sqrt(sums.weighingVariance() / times), inputs.moistureMg());
    }
    double flat = Math.hypot(balance.linearityMg(), balance.eccentricityMg()) / Math.sqrt(THREE);
    double shown = Math.sqrt(sums.resolutionVariance() / times);
    double noise = Math.hypot(balance.repeatabilityMg(), inputs.moistureMg());
    return Math.hypot(noise, Math.hypot(flat, shown));
  }

  private void volumes(double[] u, SampleSums sums) {
    double read = sums.readMillilitres() * PER_CENT;
    u[Cause.VOLUME.place()] = Math.sqrt(sums.statedVariance());
    u[Cause.VOLUME_READING.place()] = inputs.volumeReadingMl() * Math.sqrt(sums.readings());
    u[Cause.VOLUME_CALIBRATION.place()] = inputs.volumeCalibrationPct() * read;
    u[Cause.VOLUME_TEMPERATURE.place()] = inputs.volumeTemperaturePct() * read;
  }

  /** Welch-Satterthwaite over the independent causes, as {@code Budget} does. */
  double dof(double value, double litres, double[] u, double variance) {
    if (!finite) {
      return Double.POSITIVE_INFINITY;
    }
    double fourths = 0;
    for (int i = 0; i < dofs.length; i++) {
      if (dofs[i] < Double.POSITIVE_INFINITY && u[i] > 0) {
        double part = Concentration.sensitivity(CAUSES[i], value, litres) * u[i];
        fourths += part * part * part * part / dofs[i];
      }
    }
    return fourths > 0 ? variance * variance / fourths : Double.POSITIVE_INFINITY;
  }
}
