package org.siltbench.calc.result;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankCorrection;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.montecarlo.FirstOrderDoubt;

/** Turns one row at a time into its result. */
final class RowResults {

  private final Method method;
  private final Propagator propagator;
  private final Propagator uncorrected;
  private final boolean blankMissing;
  private final @Nullable Groups groups;
  private final RowFlags rowFlags;
  private final FurtherResults further;
  private final ByDistributions distributions = new ByDistributions();

  RowResults(
      Method method,
      Propagator propagator,
      Propagator uncorrected,
      boolean blankMissing,
      @Nullable Groups groups,
      FurtherResults further,
      boolean ignitionBlank) {
    this.method = method;
    this.further = further;
    this.propagator = propagator;
    this.uncorrected = uncorrected;
    this.blankMissing = blankMissing;
    this.groups = groups;
    this.rowFlags = new RowFlags(method, ignitionBlank);
  }

  ResultRow of(InputRow row) {
    Weighed weighed = Weighed.of(row, method);
    if (weighed == null) {
      throw new IllegalStateException("a row without masses was let through: " + row);
    }
    SampleSums sums = sums(row, weighed);
    Propagator use = row.role().isWater() ? propagator : uncorrected;
    Concentration concentration = concentration(sums, use);
    ConstantVerdict verdict =
        method.constancy().judgePost(row.posts(), row.pre(), row.resolution());
    double limit = Double.isNaN(sums.litres()) ? Double.NaN : method.report().limit(sums.litres());
    Further more = further.of(row, sums, concentration, use);
    Raised flags = rowFlags.of(row, weighed, sums, concentration, verdict, limit, more);
    distributions(flags, concentration);
    batchWide(flags, row, use.blank());
    return new ResultRow(
        row,
        weighed.counted(),
        weighed.residue(),
        use.blank().milligrams(),
        byDistributions(flags, row, concentration),
        verdict,
        limit,
        flags.all(),
        more);
  }

  private SampleSums sums(InputRow row, Weighed weighed) {
    SampleSums group = groups == null ? null : groups.of(row);
    if (group != null) {
      return group;
    }
    SampleSums alone = new SampleSums();
    weighed.addTo(alone, row, method);
    return alone;
  }

  /** None without a volume, and none for what must not be pooled. */
  private static @Nullable Concentration concentration(SampleSums sums, Propagator use) {
    boolean possible = !Double.isNaN(sums.litres()) && !sums.isTakenMixed();
    return possible ? use.concentration(sums) : null;
  }

  private static void distributions(Raised flags, @Nullable Concentration concentration) {
    if (concentration == null || !concentration.mayBeDoubtful()) {
      return;
    }
    Set<FirstOrderDoubt> doubts = concentration.doubts();
    if (doubts.contains(FirstOrderDoubt.VOLUME_NEAR_ZERO)) {
      flags.add(Flag.VOLUME_DOUBTFUL);
    } else if (doubts.contains(FirstOrderDoubt.VOLUME_UNCERTAIN)) {
      flags.add(Flag.BY_DISTRIBUTIONS);
    }
    if (doubts.contains(FirstOrderDoubt.FEW_DEGREES_OF_FREEDOM)) {
      flags.add(Flag.FEW_DOF);
    }
  }

  private @Nullable Concentration byDistributions(
      Raised flags, InputRow row, @Nullable Concentration concentration) {
    if (concentration == null || !flags.has(Flag.BY_DISTRIBUTIONS)) {
      return concentration;
    }
    String name = row.sample().isEmpty() ? row.filter() : row.sampleKey();
    return concentration.with(distributions.interval(concentration, ByDistributions.seed(name)));
  }

  private void batchWide(Raised flags, InputRow row, BlankCorrection used) {
    if (row.role().isWater()) {
      if (used.blanks() > 0) {
        flags.add(Flag.BLANK_SUBTRACTED);
      }
      if (blankMissing) {
        flags.add(Flag.BLANK_MISSING);
      }
    }
    Flag pair = groups == null ? null : groups.pairs().flag(row.pair());
    if (pair != null) {
      flags.add(pair);
    }
  }
}
