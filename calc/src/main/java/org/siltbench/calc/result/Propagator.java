package org.siltbench.calc.result;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankCorrection;
import org.siltbench.calc.method.UncertaintyInputs;
import org.siltbench.calc.uncertainty.Coverage;
import org.siltbench.calc.uncertainty.StandardUncertainty;

/**
 * Computes concentrations and their first-order uncertainty under one method, balance and blank.
 *
 * <p>C = (R − n·B)/V with R the sum of the residues in mg, n filters, B the blank in mg, V the sum
 * of the volumes in L. Sensitivities: 1/V for masses, −C/V for volumes, 1 for sub-sampling.
 */
final class Propagator {

  private static final double PER_CENT = 0.01;
  private static final Cause[] CAUSES = Cause.values();

  private final UncertaintyInputs inputs;
  private final @Nullable BalanceRecord balance;
  private final BlankCorrection blank;
  private final Coverage coverage;
  private final Map<Cause, Double> finiteDof = new EnumMap<>(Cause.class);

  Propagator(UncertaintyInputs inputs, @Nullable BalanceRecord balance, BlankCorrection blank) {
    this.inputs = inputs;
    this.balance = balance;
    this.blank = blank;
    this.coverage = coverage(inputs);
    note(Cause.WEIGHING, inputs.massDof());
    note(
        Cause.REPEATABILITY,
        balance == null ? Double.POSITIVE_INFINITY : balance.repeatabilityDof());
    note(Cause.BLANK, blank.dof());
  }

  private static Coverage coverage(UncertaintyInputs inputs) {
    Double probability = inputs.probability();
    Double k = inputs.k();
    return probability != null
        ? Coverage.ofProbability(probability)
        : Coverage.ofFactor(k == null ? 2 : k);
  }

  private void note(Cause cause, double dof) {
    if (!Double.isInfinite(dof)) {
      finiteDof.put(cause, dof);
    }
  }

  Coverage coverage() {
    return coverage;
  }

  BlankCorrection blank() {
    return blank;
  }

  /** Degrees of freedom of a cause. */
  double dof(Cause cause) {
    return finiteDof.getOrDefault(cause, Double.POSITIVE_INFINITY);
  }

  /** The concentration of a sample whose volume is known and above zero. */
  Concentration concentration(SampleSums sums) {
    double litres = sums.litres();
    double net = sums.residue().milligrams() - sums.filters() * blank.milligrams();
    double value = net / litres;
    double[] u = new double[CAUSES.length];
    masses(u, sums, net);
    volumes(u, sums);
    u[Cause.SUBSAMPLING.place()] = inputs.subsamplingPct() * PER_CENT * Math.abs(value);
    return combine(value, litres, u);
  }

  private void masses(double[] u, SampleSums sums, double net) {
    if (balance == null) {
      u[Cause.WEIGHING.place()] = Math.sqrt(sums.weighingVariance());
    } else {
      balance(u, balance, sums, net);
    }
    u[Cause.MOISTURE.place()] = inputs.moistureMg() * Math.sqrt(sums.weighings());
    u[Cause.BLANK.place()] = sums.filters() * blank.u();
  }

  private static void balance(double[] u, BalanceRecord record, SampleSums sums, double net) {
    double independent = Math.sqrt(sums.weighings());
    u[Cause.REPEATABILITY.place()] = record.repeatabilityMg() * independent;
    u[Cause.RESOLUTION.place()] = Math.sqrt(sums.resolutionVariance());
    u[Cause.LINEARITY.place()] =
        StandardUncertainty.rectangular(record.linearityMg()) * independent;
    u[Cause.ECCENTRICITY.place()] =
        StandardUncertainty.rectangular(record.eccentricityMg()) * independent;
    u[Cause.CHECK_WEIGHT.place()] = record.spanRelative() * Math.abs(net);
    u[Cause.DRIFT.place()] = record.driftRelative() * Math.abs(sums.postMg());
    u[Cause.BUOYANCY.place()] = record.buoyancyRelative() * Math.abs(sums.postMg());
  }

  private void volumes(double[] u, SampleSums sums) {
    double read = sums.readMillilitres() * PER_CENT;
    u[Cause.VOLUME.place()] = Math.sqrt(sums.statedVariance());
    u[Cause.VOLUME_READING.place()] = inputs.volumeReadingMl() * Math.sqrt(sums.readings());
    u[Cause.VOLUME_CALIBRATION.place()] = inputs.volumeCalibrationPct() * read;
    u[Cause.VOLUME_TEMPERATURE.place()] = inputs.volumeTemperaturePct() * read;
  }

  private Concentration combine(double value, double litres, double[] u) {
    double variance = 0;
    for (Cause cause : CAUSES) {
      double part = Concentration.sensitivity(cause, value, litres) * u[cause.place()];
      variance += part * part;
    }
    double dof = finiteDof.isEmpty() ? Double.POSITIVE_INFINITY : dof(value, litres, u, variance);
    return new Concentration(this, value, litres, u, Math.sqrt(variance), dof);
  }

  /** Welch-Satterthwaite over the independent causes, as {@code Budget} does. */
  private double dof(double value, double litres, double[] u, double variance) {
    double fourths = 0;
    for (Map.Entry<Cause, Double> finite : finiteDof.entrySet()) {
      Cause cause = finite.getKey();
      double part = Concentration.sensitivity(cause, value, litres) * u[cause.place()];
      fourths += part * part * part * part / finite.getValue();
    }
    return fourths > 0 ? variance * variance / fourths : Double.POSITIVE_INFINITY;
  }
}
