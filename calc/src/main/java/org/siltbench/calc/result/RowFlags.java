package org.siltbench.calc.result;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Taken;
import org.siltbench.calc.quantity.Mass;

/** The flags that a row earns by itself. */
final class RowFlags {

  private final Method method;

  RowFlags(Method method) {
    this.method = method;
  }

  Set<Flag> of(
      InputRow row,
      Weighed weighed,
      SampleSums sums,
      @Nullable Concentration concentration,
      ConstantVerdict verdict,
      double limit) {
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    flags.addAll(row.seen());
    residue(flags, row, weighed.residue());
    constancy(flags, row, verdict);
    taken(flags, row, sums);
    if (row.role().isWater()) {
      add(flags, Flag.NO_VOLUME, Double.isNaN(sums.litres()));
    } else {
      add(
          flags,
          Flag.BLANK_HIGH,
          method.blank().isHigh(weighed.residue(), Survey.mgPerL(row, weighed)));
    }
    add(flags, Flag.BELOW_LIMIT, concentration != null && concentration.mgPerL() < limit);
    add(flags, Flag.NEGATIVE, concentration != null && concentration.mgPerL() < 0);
    return flags;
  }

  private static void add(Set<Flag> flags, Flag flag, boolean holds) {
    if (holds) {
      flags.add(flag);
    }
  }

  private void residue(Set<Flag> flags, InputRow row, Mass residue) {
    add(flags, Flag.NEGATIVE, residue.isNegative());
    add(flags, Flag.NEGATIVE_BEYOND_LIMIT, residue.compareTo(method.residue().stopBelow()) < 0);
    if (row.role().isWater()) {
      add(flags, Flag.RESIDUE_LOW, residue.compareTo(method.residue().min()) < 0);
      add(flags, Flag.RESIDUE_HIGH, residue.compareTo(method.residue().max()) > 0);
    }
  }

  private void constancy(Set<Flag> flags, InputRow row, ConstantVerdict verdict) {
    boolean ruled = method.constancy().postRule() != null;
    switch (verdict.kind()) {
      case CONSTANT -> {}
      case DRY_AGAIN -> flags.add(Flag.NOT_CONSTANT);
      case UNKNOWN -> flags.add(Flag.CONSTANT_UNKNOWN);
      case NOT_TESTED -> add(flags, Flag.NOT_TESTED, ruled && !row.postStated());
    }
    Mass step = row.resolution();
    add(
        flags,
        Flag.COARSE_BALANCE,
        step != null && step.compareTo(method.constancy().coarsest()) > 0);
  }

  private void taken(Set<Flag> flags, InputRow row, SampleSums sums) {
    add(flags, Flag.SEVERAL_FILTERS, sums.filters() > 1);
    add(flags, Flag.TAKEN_MIXED, sums.isTakenMixed());
    boolean departs = row.taken() != null && row.taken() != method.taken();
    add(flags, Flag.ALIQUOT_DEPARTURE, departs && row.taken() == Taken.ALIQUOT);
    add(flags, Flag.WHOLE_DEPARTURE, departs && row.taken() == Taken.WHOLE);
  }
}
