package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.highconc.MassRatio;
import org.siltbench.calc.highconc.SampleByMass;
import org.siltbench.calc.highconc.SedimentVolume;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;

/**
 * The volume of the mixture where something else was measured: its mass, or the water that passed.
 */
final class EffectiveVolume {

  private EffectiveVolume() {}

  /** The volume of a row whose residue is known; null where it has none. */
  static @Nullable Volume of(InputRow row, Mass residue) {
    RowExtras extras = row.extras();
    Volume stated = row.volume();
    if (extras == null) {
      return stated;
    }
    Mass mixture = extras.mixture();
    if (mixture != null) {
      return Volume.ofMillilitres(byMass(residue, mixture).millilitres(MassRatio.CONVENTIONAL));
    }
    return extras.filtrate() && stated != null ? withGrains(stated, residue) : stated;
  }

  private static Volume withGrains(Volume filtrate, Mass residue) {
    double mg = Math.max(0, residue.milligrams());
    double litres = SedimentVolume.litres(mg, MassRatio.CONVENTIONAL.sedimentDensity());
    return filtrate.plus(Volume.ofMillilitres(litres * 1000));
  }

  /** A negative residue is clear water: it takes no place. */
  static SampleByMass byMass(Mass residue, Mass mixture) {
    return new SampleByMass(Math.max(0, residue.grams()), mixture.grams());
  }

  static boolean isHeavyEnough(InputRow row, RowExtras extras) {
    Mass mixture = extras.mixture();
    Mass pre = row.pre();
    if (mixture == null || pre == null || row.posts().isEmpty()) {
      return true;
    }
    Mass most = row.posts().stream().max(Mass::compareTo).orElse(pre).minus(pre);
    return mixture.compareTo(most) > 0 && mixture.nanograms() > 0;
  }
}
