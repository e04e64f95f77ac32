package org.siltbench.calc.result;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Span;
import org.siltbench.calc.method.Taken;
import org.siltbench.calc.quantity.Mass;

/** The flags that a row earns by itself. */
final class RowFlags {

  private final Method method;
  private final boolean ignitionBlank;

  RowFlags(Method method, boolean ignitionBlank) {
    this.method = method;
    this.ignitionBlank = ignitionBlank;
  }

  Set<Flag> of(
      InputRow row,
      Weighed weighed,
      SampleSums sums,
      @Nullable Concentration concentration,
      ConstantVerdict verdict,
      double limit,
      @Nullable Further further) {
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    if (!row.seen().isEmpty()) {
      flags.addAll(row.seen());
    }
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
    if (further != null) {
      further(flags, row, further);
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

  private void further(Set<Flag> flags, InputRow row, Further further) {
    RowExtras extras = row.extras();
    if (extras != null) {
      add(flags, Flag.VOLUME_BY_MASS, extras.mixture() != null);
      add(flags, Flag.SEDIMENT_VOLUME, extras.filtrate() && row.volume() != null);
      boolean stated = extras.dissolvedMgPerL() != null && extras.dried() != null;
      add(flags, Flag.DISSOLVED_SUBTRACTED, further.dissolvedMg() > 0);
      add(flags, Flag.DISSOLVED_LEFT, stated && !(further.dissolvedMg() > 0));
      add(flags, Flag.SAND_IN_ALIQUOT, extras.isSand() && row.taken() == Taken.ALIQUOT);
      boolean said = extras.material() != null && extras.muffledCelsius() != null;
      add(flags, Flag.MUFFLING_UNKNOWN, extras.ignited() != null && !said);
    }
    boolean water = row.role().isWater();
    add(flags, Flag.NO_IGNITION_BLANK, water && further.ignited() != null && !ignitionBlank);
    Recovery recovery = further.recovery();
    Span span = method.sample().recoveryPct();
    add(
        flags,
        Flag.RECOVERY_OUT,
        recovery != null
            && span != null
            && (recovery.percent() < span.low() || recovery.percent() > span.high()));
  }
}
