package org.siltbench.calc.result;

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

  Raised of(
      InputRow row,
      Weighed weighed,
      SampleSums sums,
      @Nullable Concentration concentration,
      ConstantVerdict verdict,
      double limit,
      @Nullable Further further) {
    Raised flags = new Raised();
    row.seen().forEach(flags::add);
    residue(flags, row, weighed.residue());
    constancy(flags, row, verdict);
    taken(flags, row, sums);
    if (row.role().isWater()) {
      flags.add(Flag.NO_VOLUME, Double.isNaN(sums.litres()));
    } else {
      flags.add(
          Flag.BLANK_HIGH, method.blank().isHigh(weighed.residue(), Survey.mgPerL(row, weighed)));
    }
    if (further != null) {
      further(flags, row, further);
    }
    flags.add(Flag.BELOW_LIMIT, concentration != null && concentration.mgPerL() < limit);
    flags.add(Flag.NEGATIVE, concentration != null && concentration.mgPerL() < 0);
    return flags;
  }

  private void residue(Raised flags, InputRow row, Mass residue) {
    flags.add(Flag.NEGATIVE, residue.isNegative());
    flags.add(Flag.NEGATIVE_BEYOND_LIMIT, residue.compareTo(method.residue().stopBelow()) < 0);
    if (row.role().isWater()) {
      flags.add(Flag.RESIDUE_LOW, residue.compareTo(method.residue().min()) < 0);
      flags.add(Flag.RESIDUE_HIGH, residue.compareTo(method.residue().max()) > 0);
    }
  }

  private void constancy(Raised flags, InputRow row, ConstantVerdict verdict) {
    boolean ruled = method.constancy().postRule() != null;
    switch (verdict.kind()) {
      case CONSTANT -> {}
      case DRY_AGAIN -> flags.add(Flag.NOT_CONSTANT);
      case UNKNOWN -> flags.add(Flag.CONSTANT_UNKNOWN);
      case NOT_TESTED -> flags.add(Flag.NOT_TESTED, ruled && !row.postStated());
    }
    Mass step = row.resolution();
    flags.add(
        Flag.COARSE_BALANCE, step != null && step.compareTo(method.constancy().coarsest()) > 0);
  }

  private void taken(Raised flags, InputRow row, SampleSums sums) {
    flags.add(Flag.SEVERAL_FILTERS, sums.filters() > 1);
    flags.add(Flag.TAKEN_MIXED, sums.isTakenMixed());
    boolean departs = row.taken() != null && row.taken() != method.taken();
    flags.add(Flag.ALIQUOT_DEPARTURE, departs && row.taken() == Taken.ALIQUOT);
    flags.add(Flag.WHOLE_DEPARTURE, departs && row.taken() == Taken.WHOLE);
  }

  private void further(Raised flags, InputRow row, Further further) {
    RowExtras extras = row.extras();
    if (extras != null) {
      flags.add(Flag.VOLUME_BY_MASS, extras.mixture() != null);
      flags.add(Flag.SEDIMENT_VOLUME, extras.filtrate() && row.volume() != null);
      boolean stated = extras.dissolvedMgPerL() != null && extras.dried() != null;
      flags.add(Flag.DISSOLVED_SUBTRACTED, further.dissolvedMg() > 0);
      flags.add(Flag.DISSOLVED_LEFT, stated && !(further.dissolvedMg() > 0));
      flags.add(Flag.SAND_IN_ALIQUOT, extras.isSand() && row.taken() == Taken.ALIQUOT);
      boolean said = extras.material() != null && extras.muffledCelsius() != null;
      flags.add(Flag.MUFFLING_UNKNOWN, extras.ignited() != null && !said);
    }
    boolean water = row.role().isWater();
    flags.add(Flag.NO_IGNITION_BLANK, water && further.ignited() != null && !ignitionBlank);
    Recovery recovery = further.recovery();
    Span span = method.sample().recoveryPct();
    flags.add(
        Flag.RECOVERY_OUT,
        recovery != null
            && span != null
            && (recovery.percent() < span.low() || recovery.percent() > span.high()));
  }
}
