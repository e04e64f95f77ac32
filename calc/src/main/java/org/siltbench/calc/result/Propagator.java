package org.siltbench.calc.result;

import java.util.Arrays;
import java.util.stream.IntStream;
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
  private final int[] finite;
  private final @Nullable Squares squares;
  private final double moisture;
  private final double blankVariance;
  private final double reading;
  private final double calibration;
  private final double temperature;
  private final double subsampling;

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
    this.finite =
        IntStream.range(0, dofs.length).filter(i -> !Double.isInfinite(dofs[i])).toArray();
    this.squares = balance == null ? null : Squares.of(balance);
    this.moisture = square(inputs.moistureMg());
    this.blankVariance = square(blank.u());
    this.reading = square(inputs.volumeReadingMl());
    this.calibration = square(inputs.volumeCalibrationPct() * PER_CENT);
    this.temperature = square(inputs.volumeTemperaturePct() * PER_CENT);
    this.subsampling = square(inputs.subsamplingPct() * PER_CENT);
  }

  private static Coverage coverage(UncertaintyInputs inputs) {
    Double probability = inputs.probability();
    Double k = inputs.k();
    return probability != null
        ? Coverage.ofProbability(probability)
        : Coverage.ofFactor(k == null ? 2 : k);
  }

  /** The same for filters that no blank is taken off from. */
  Propagator without() {
    return blank.equals(BlankCorrection.NONE)
        ? this
        : new Propagator(inputs, balance, BlankCorrection.NONE);
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

  /** The concentration of a sample whose volume is known and above zero. */
  Concentration concentration(SampleSums sums) {
    double litres = sums.litres();
    double net = sums.residueMg() - sums.blankShares() * blank.milligrams();
    double value = net / litres;
    double[] variances = new double[CAUSES.length];
    masses(variances, sums, net);
    volumes(variances, sums);
    variances[Cause.SUBSAMPLING.place()] = subsampling * value * value;
    return new Concentration(this, value, litres, variances);
  }

  private void masses(double[] to, SampleSums sums, double net) {
    if (squares == null) {
      to[Cause.WEIGHING.place()] = sums.weighingVariance();
    } else {
      squares.of(to, sums, net);
    }
    to[Cause.MOISTURE.place()] = moisture * sums.weighings();
    double shares = sums.blankShares();
    to[Cause.BLANK.place()] = shares * shares * blankVariance;
    to[Cause.DISSOLVED.place()] = sums.dissolvedVariance();
  }

  /** The squares of a balance's record, for one weighing, one milligram. */
  private record Squares(
      double repeatability,
      double linearity,
      double eccentricity,
      double span,
      double drift,
      double buoyancy) {

    static Squares of(BalanceRecord record) {
      return new Squares(
          square(record.repeatabilityMg()),
          square(record.linearityMg()) / THREE,
          square(record.eccentricityMg()) / THREE,
          square(record.spanRelative()),
          square(record.driftRelative()),
          square(record.buoyancyRelative()));
    }

    void of(double[] to, SampleSums sums, double net) {
      double weighings = sums.weighings();
      double post = square(sums.postMg());
      to[Cause.REPEATABILITY.place()] = repeatability * weighings;
      to[Cause.RESOLUTION.place()] = sums.resolutionVariance();
      to[Cause.LINEARITY.place()] = linearity * weighings;
      to[Cause.ECCENTRICITY.place()] = eccentricity * weighings;
      to[Cause.CHECK_WEIGHT.place()] = span * net * net;
      to[Cause.DRIFT.place()] = drift * post;
      to[Cause.BUOYANCY.place()] = buoyancy * post;
    }
  }

  private static double square(double x) {
    return x * x;
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

  private void volumes(double[] to, SampleSums sums) {
    double read = square(sums.readMillilitres());
    to[Cause.VOLUME.place()] = sums.statedVariance();
    to[Cause.VOLUME_READING.place()] = reading * sums.readings();
    to[Cause.VOLUME_CALIBRATION.place()] = calibration * read;
    to[Cause.VOLUME_TEMPERATURE.place()] = temperature * read;
  }

  /**
   * Welch-Satterthwaite over the independent causes, as {@code Budget} does.
   *
   * @param massFactor ∂C/∂m squared, per mg²
   * @param volumeFactor ∂C/∂V squared, per mL²
   */
  double dof(double massFactor, double volumeFactor, double[] variances, double variance) {
    double fourths = 0;
    for (int i : finite) {
      double part = Concentration.factor(i, massFactor, volumeFactor) * variances[i];
      fourths += part * part / dofs[i];
    }
    return fourths > 0 ? variance * variance / fourths : Double.POSITIVE_INFINITY;
  }
}
