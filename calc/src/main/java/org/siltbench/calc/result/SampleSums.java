package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Taken;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;
import org.siltbench.calc.uncertainty.StandardUncertainty;

/**
 * One sample over its filters: masses and volumes add, exactly; what is independent from filter to
 * filter adds in squares, what they share is left to be applied to the sum.
 */
final class SampleSums {

  private int filters;
  private Mass residue = Mass.ZERO;
  private Mass post = Mass.ZERO;
  private Volume volume = Volume.ZERO;
  private boolean volumeMissing;
  private double weighings;
  private double weighingVariance;
  private double resolutionVariance;
  private double statedVariance;
  private double readMillilitres;
  private int readings;
  private @Nullable Taken taken;
  private boolean takenMixed;

  /**
   * Adds a filter.
   *
   * @param counted the post-weigh mass that counts
   * @param residue counted less pre-weigh
   * @param postWeight 1, or ½ where the mean of two weighings counts
   * @param massU standard uncertainty of one weighing, mg
   */
  void add(InputRow row, Mass counted, Mass residue, double postWeight, double massU) {
    filters++;
    this.residue = this.residue.plus(residue);
    post = post.plus(counted);
    double resolution = row.resolution() == null ? 0 : row.resolution().milligrams();
    double display = StandardUncertainty.resolution(resolution);
    double each = Math.max(massU, display);
    weighings += 1 + postWeight;
    weighingVariance += (1 + postWeight) * each * each;
    resolutionVariance += (1 + postWeight) * display * display;
    addVolume(row);
    addTaken(row.taken());
  }

  private void addVolume(InputRow row) {
    Volume filtered = row.volume();
    if (filtered == null || !filtered.isPositive()) {
      volumeMissing = true;
      return;
    }
    volume = volume.plus(filtered);
    Double stated = row.volumeU();
    if (stated == null) {
      readMillilitres += filtered.millilitres();
      readings++;
    } else {
      statedVariance += stated * stated;
    }
  }

  private void addTaken(@Nullable Taken how) {
    takenMixed |= filters > 1 && how != taken;
    taken = how;
  }

  int filters() {
    return filters;
  }

  Mass residue() {
    return residue;
  }

  double postMg() {
    return post.milligrams();
  }

  /** Litres filtered; NaN when a filter's volume is missing. */
  double litres() {
    return volumeMissing ? Double.NaN : volume.litres();
  }

  /** Weighings that enter, a mean of two counted as half of one in variance. */
  double weighings() {
    return weighings;
  }

  double weighingVariance() {
    return weighingVariance;
  }

  double resolutionVariance() {
    return resolutionVariance;
  }

  double statedVariance() {
    return statedVariance;
  }

  double readMillilitres() {
    return readMillilitres;
  }

  int readings() {
    return readings;
  }

  @Nullable Taken taken() {
    return taken;
  }

  boolean isTakenMixed() {
    return takenMixed;
  }
}
