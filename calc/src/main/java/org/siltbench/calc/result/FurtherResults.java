package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankCorrection;
import org.siltbench.calc.ignition.IgnitionResult;
import org.siltbench.calc.ignition.SandAndFines;
import org.siltbench.calc.ignition.SummedResidue;
import org.siltbench.calc.quantity.Mass;

/** Works out what few rows ask for. */
final class FurtherResults {

  private final @Nullable BalanceRecord balance;
  private final IgnitionBlank loss;

  FurtherResults(@Nullable BalanceRecord balance, IgnitionBlank loss) {
    this.balance = balance;
    this.loss = loss;
  }

  /** Null where the row asks for nothing of it. */
  @Nullable Further of(InputRow row, SampleSums sums, @Nullable Concentration c, Propagator use) {
    boolean asked = row.extras() != null || sums.parts() != null || sums.furnace() != null;
    if (!asked) {
      return null;
    }
    return new Further(
        c == null ? null : sandAndFines(sums, c, use),
        c == null ? null : ignited(sums, c, use),
        c == null ? null : recovery(row, c),
        partsPerMillion(row),
        sums.dissolvedMg());
  }

  /**
   * The parts' independent uncertainty is the sum's, shared out evenly: only the total's is told.
   */
  private @Nullable SandAndFines sandAndFines(SampleSums sums, Concentration c, Propagator use) {
    SampleSums.Parts parts = sums.parts();
    if (parts == null) {
      return null;
    }
    BlankCorrection blank = use.blank();
    double scale = balance == null ? 0 : balance.spanRelative();
    double all = sums.residueMg();
    double shared = Math.hypot(sums.blankShares() * blank.u(), scale * all);
    double own = Math.sqrt(Math.max(0, c.residueU() * c.residueU() - shared * shared) / 2);
    return SandAndFines.of(
        new SummedResidue.Part(parts.sandMg(), own, parts.sandShares()),
        new SummedResidue.Part(all - parts.sandMg(), own, sums.blankShares() - parts.sandShares()),
        blank.milligrams(),
        blank.u(),
        scale,
        c.litres(),
        c.volumeU() / 1000);
  }

  /** Only where each filter of the sample was ignited. */
  private @Nullable Ignited ignited(SampleSums sums, Concentration c, Propagator use) {
    SampleSums.Furnace furnace = sums.furnace();
    if (furnace == null || furnace.filters() != sums.filters()) {
      return null;
    }
    int n = sums.filters();
    BlankCorrection blank = use.blank();
    IgnitionResult.Masses masses =
        new IgnitionResult.Masses(
            furnace.beforeMg(),
            furnace.driedMg(),
            furnace.ignitedMg(),
            n * blank.milligrams(),
            n * loss.milligrams());
    IgnitionResult split =
        IgnitionResult.of(
            masses, use.oneWeighing(sums) * Math.sqrt(n), n * blank.u(), n * loss.u());
    return Ignited.of(split, c.litres(), c.volumeU() / (c.litres() * 1000));
  }

  private static @Nullable Recovery recovery(InputRow row, Concentration c) {
    RowExtras extras = row.extras();
    Double expected = extras == null ? null : extras.expectedMgPerL();
    if (extras == null || expected == null || !(expected > 0)) {
      return null;
    }
    Double u = extras.expectedU();
    return Recovery.of(c.mgPerL(), c.u(), expected, u == null ? 0 : u);
  }

  private static double partsPerMillion(InputRow row) {
    RowExtras extras = row.extras();
    Mass mixture = extras == null ? null : extras.mixture();
    Mass pre = row.pre();
    if (mixture == null || pre == null) {
      return Double.NaN;
    }
    Mass residue = row.posts().get(row.posts().size() - 1).minus(pre);
    return EffectiveVolume.byMass(residue, mixture).partsPerMillion();
  }
}
