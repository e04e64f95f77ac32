package org.siltbench.calc.method;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.ConstantRule;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.constant.CountingMass;
import org.siltbench.calc.quantity.Mass;

/**
 * Constant mass under the method.
 *
 * @param postRule the rule for post-weighings; null where the method has none
 * @param preRule the rule for pre-weighings; null where one pre-weighing is enough
 * @param counts which mass is the result
 * @param maxCycles dryings after which a person must decide
 * @param coarsest the coarsest step a balance may show under this method
 */
public record Constancy(
    @Nullable ConstantRule postRule,
    @Nullable ConstantRule preRule,
    CountingMass counts,
    int maxCycles,
    Mass coarsest) {

  /**
   * Judges post-weighings, oldest first; see {@link ConstantVerdict#of}.
   *
   * @param preMass the filter's pre-weigh mass, or null
   * @param resolution the balance's displayed step, or null where it is not known
   */
  public ConstantVerdict judgePost(
      List<Mass> masses, @Nullable Mass preMass, @Nullable Mass resolution) {
    return ConstantVerdict.of(postRule, masses, preMass, resolution, coarsest);
  }

  /** Judges pre-weighings, oldest first; the base of a percentage is the filter itself. */
  public ConstantVerdict judgePre(List<Mass> masses, @Nullable Mass resolution) {
    return ConstantVerdict.of(preRule, masses, Mass.ZERO, resolution, coarsest);
  }

  /** True when a verdict of "dry again" comes after so many dryings that a person must decide. */
  public boolean needsDecision(ConstantVerdict verdict, int dryings) {
    return verdict.kind() == ConstantVerdict.Kind.DRY_AGAIN && dryings >= maxCycles;
  }
}
