package org.siltbench.calc.constant;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.ConstantVerdict.Kind;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.reason.Reason;

/** Applies a rule to the last two of at least two masses. */
final class ConstantJudge {

  private ConstantJudge() {}

  static ConstantVerdict judge(
      ConstantRule rule,
      List<Mass> masses,
      @Nullable Mass preMass,
      @Nullable Mass resolution,
      @Nullable Mass coarsest) {
    Mass previous = masses.get(masses.size() - 2);
    Mass change = masses.get(masses.size() - 1).minus(previous);
    if (resolution != null && coarsest != null && resolution.compareTo(coarsest) > 0) {
      return new ConstantVerdict(
          Kind.UNKNOWN,
          change,
          null,
          ConstantSays.COARSE.with(resolution.toMilligrams(), coarsest.toMilligrams()));
    }
    if (rule.needsPreMass() && preMass == null) {
      return new ConstantVerdict(Kind.UNKNOWN, change, null, ConstantSays.NO_PRE_MASS.with());
    }
    return compare(rule, change, limit(rule, base(rule, previous, preMass), coarsest));
  }

  /**
   * The rule's limit; a percentage of a small residue, or of a blank's, asks for no less than one
   * of the coarsest steps the method allows: no balance under the method could tell less.
   */
  private static Mass limit(ConstantRule rule, Mass base, @Nullable Mass coarsest) {
    Mass limit = rule.limit(base);
    if (rule.percent() == null || coarsest == null || limit.compareTo(coarsest) >= 0) {
      return limit;
    }
    return coarsest;
  }

  private static Mass base(ConstantRule rule, Mass previous, @Nullable Mass preMass) {
    if (rule.base() == ConstantRule.Base.RESIDUE && preMass != null) {
      return previous.minus(preMass);
    }
    return previous;
  }

  private static ConstantVerdict compare(ConstantRule rule, Mass change, Mass limit) {
    if (rule.passes(change, limit)) {
      return new ConstantVerdict(
          Kind.CONSTANT,
          change,
          limit,
          ConstantSays.WITHIN.with(moved(change), limit.toMilligrams()));
    }
    ConstantSays why = change.isNegative() ? ConstantSays.LOSING : ConstantSays.GAINING;
    return new ConstantVerdict(
        Kind.DRY_AGAIN, change, limit, why.with(moved(change), limit.toMilligrams()));
  }

  private static Reason moved(Mass change) {
    if (change.nanograms() == 0) {
      return ConstantSays.NO_CHANGE.with();
    }
    ConstantSays way = change.isNegative() ? ConstantSays.LOST : ConstantSays.GAINED;
    return way.with(change.abs().toMilligrams());
  }
}
