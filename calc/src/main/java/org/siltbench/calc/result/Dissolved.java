package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.highconc.DissolvedSolids;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;

/** The dissolved solids of a row, and whether the method has them taken off. */
final class Dissolved {

  private static final double PER_CENT = 100;

  private Dissolved() {}

  /** What dried up with the sediment; null where it was not stated. */
  static @Nullable DissolvedSolids of(RowExtras extras, Mass residue) {
    Double concentration = extras.dissolvedMgPerL();
    Volume dried = extras.dried();
    if (concentration == null || dried == null) {
      return null;
    }
    Double u = extras.dissolvedU();
    return DissolvedSolids.of(
        residue.milligrams(), concentration, u == null ? 0 : u, dried.litres(), 0);
  }

  /** The same where the method has it subtracted; else null. */
  static @Nullable DissolvedSolids subtracted(RowExtras extras, Mass residue, Method method) {
    Double from = method.sample().dissolvedFromPct();
    DissolvedSolids stated = of(extras, residue);
    if (stated == null || from == null) {
      return null;
    }
    return PER_CENT * stated.shareOfSediment() >= from ? stated : null;
  }
}
