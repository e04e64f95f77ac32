package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.highconc.DissolvedSolids;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Taken;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;

/**
 * One sample over its filters: masses and volumes add, exactly; what is independent from filter to
 * filter adds in squares, what they share is left to be applied to the sum.
 */
final class SampleSums {

  private static final double TO_VARIANCE = 12;
  private static final double NG_PER_MG = 1e6;
  private static final double NL_PER_L = 1e9;

  private int filters;
  private int blankShares;
  private long residue;
  private long post;
  private long volume;
  private boolean volumeMissing;
  private double weighings;
  private double weighingVariance;
  private double resolutionVariance;
  private double statedVariance;
  private double readMillilitres;
  private int readings;
  private @Nullable Taken taken;
  private boolean takenMixed;
  private double dissolvedMg;
  private double dissolvedVariance;
  private @Nullable Parts parts;
  private @Nullable Furnace furnace;

  /** Adds a filter. */
  void add(InputRow row, Weighed weighed, Method method) {
    filters++;
    blankShares += share(row);
    long net = weighed.residue().nanograms();
    residue = Math.addExact(residue, net);
    post = Math.addExact(post, weighed.counted().nanograms());
    double massU = method.uncertainty().massMg();
    Mass step = row.resolution();
    double d = step == null ? 0 : step.milligrams();
    double display = d * d / TO_VARIANCE;
    double times = 1 + weighed.postWeight();
    weighings += times;
    weighingVariance += times * Math.max(massU * massU, display);
    resolutionVariance += times * display;
    addVolume(row, weighed.residue());
    takenMixed |= filters > 1 && row.taken() != taken;
    taken = row.taken();
    RowExtras extras = row.extras();
    if (extras != null) {
      addExtras(row, extras, weighed, method);
    }
  }

  /** A dish holds no filter, so no filter's blank. */
  private static int share(InputRow row) {
    RowExtras extras = row.extras();
    return extras != null && extras.part() == Fraction.SAND_IN_DISH ? 0 : 1;
  }

  private void addVolume(InputRow row, Mass net) {
    if (row.isSand()) {
      return;
    }
    Volume filtered = EffectiveVolume.of(row, net);
    if (filtered == null || !filtered.isPositive()) {
      volumeMissing = true;
      return;
    }
    volume = Math.addExact(volume, filtered.nanolitres());
    Double stated = row.volumeU();
    if (stated == null) {
      readMillilitres += filtered.millilitres();
      readings++;
    } else {
      statedVariance += stated * stated;
    }
  }

  private void addExtras(InputRow row, RowExtras extras, Weighed weighed, Method method) {
    DissolvedSolids dissolved = Dissolved.subtracted(extras, weighed.residue(), method);
    if (dissolved != null) {
      dissolvedMg += dissolved.milligrams();
      dissolvedVariance += dissolved.uncertainty() * dissolved.uncertainty();
    }
    double mg = weighed.residue().milligrams() - (dissolved == null ? 0 : dissolved.milligrams());
    if (extras.isSand()) {
      Parts apart = parts == null ? new Parts() : parts;
      apart.add(mg, share(row));
      parts = apart;
    }
    Mass ignited = extras.ignited();
    if (ignited != null) {
      Furnace heated = furnace == null ? new Furnace() : furnace;
      heated.add(row, weighed, ignited);
      furnace = heated;
    }
  }

  /** Sand summed apart; the rest of the sample is its fines. */
  static final class Parts {
    private double sandMg;
    private int sandShares;

    private void add(double mg, int blankShare) {
      sandMg += mg;
      sandShares += blankShare;
    }

    double sandMg() {
      return sandMg;
    }

    int sandShares() {
      return sandShares;
    }
  }

  /** What went through the furnace. */
  static final class Furnace {
    private int filters;
    private double beforeMg;
    private double driedMg;
    private double ignitedMg;

    private void add(InputRow row, Weighed weighed, Mass ignited) {
      filters++;
      Mass pre = row.pre();
      beforeMg += pre == null ? Double.NaN : pre.milligrams();
      driedMg += weighed.counted().milligrams();
      ignitedMg += ignited.milligrams();
    }

    int filters() {
      return filters;
    }

    double beforeMg() {
      return beforeMg;
    }

    double driedMg() {
      return driedMg;
    }

    double ignitedMg() {
      return ignitedMg;
    }
  }

  int filters() {
    return filters;
  }

  /** How often the filters' shared blank is taken off. */
  int blankShares() {
    return blankShares;
  }

  /** Residue before the blank, what was dissolved taken off where the method asks for it, mg. */
  double residueMg() {
    return residue / NG_PER_MG - dissolvedMg;
  }

  double postMg() {
    return post / NG_PER_MG;
  }

  /** Litres filtered; NaN when a filter's volume is missing. */
  double litres() {
    return volumeMissing || volume == 0 ? Double.NaN : volume / NL_PER_L;
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

  double dissolvedMg() {
    return dissolvedMg;
  }

  double dissolvedVariance() {
    return dissolvedVariance;
  }

  /** The sand; null where it was not weighed apart. */
  @Nullable Parts parts() {
    return parts;
  }

  /** The furnace's masses; null where none of the filters was ignited. */
  @Nullable Furnace furnace() {
    return furnace;
  }

  @Nullable Taken taken() {
    return taken;
  }

  boolean isTakenMixed() {
    return takenMixed;
  }
}
