package org.siltbench.demo.storm;

import java.util.SplittableRandom;

/**
 * How a stated volume and an aliquot differ from the truth. The same figures stand in the
 * campaign's method, so that the stated uncertainty can be held against the truth.
 *
 * @param readingMl of one reading at the funnel's mark, mL
 * @param calibrationPct of the mark itself, % of the volume
 * @param temperaturePct of vessel and water, % of the volume
 * @param subsamplingPct of taking an aliquot, % of the concentration
 */
public record VolumeErrors(
    double readingMl, double calibrationPct, double temperaturePct, double subsamplingPct) {

  /**
   * A drawn truth behind a stated volume. The mark's error is drawn anew for each sample, although
   * one funnel is used: so the samples of a storm can be counted as independent.
   */
  public double trueMillilitres(double stated, SplittableRandom chance) {
    double share = calibrationPct * chance.nextGaussian() + temperaturePct * chance.nextGaussian();
    return stated * (1 + share / 100) + readingMl * chance.nextGaussian();
  }

  /** A drawn concentration in the aliquot. */
  public double inAliquot(double concentration, SplittableRandom chance) {
    return concentration * (1 + subsamplingPct / 100 * chance.nextGaussian());
  }
}
