package org.siltbench.calc.constant;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.reason.Reason;

/**
 * The answer to "is it dry?" over successive weighings of one filter.
 *
 * @param kind the verdict
 * @param change the last mass less the one before; null when there are not two
 * @param limit the limit that was applied; null when none could be
 * @param reason one sentence for the person
 */
public record ConstantVerdict(
    Kind kind, @Nullable Mass change, @Nullable Mass limit, Reason reason) {

  /** Why, in English. */
  public String why() {
    return reason.english();
  }

  /** The verdicts; {@link #word()} is the stable word for scripts. */
  public enum Kind {
    /** The last two weighings agree under the rule. */
    CONSTANT("constant"),
    /** They do not: dry, cool and weigh once more. */
    DRY_AGAIN("dry-again"),
    /** There is only one weighing, or the method has no rule. */
    NOT_TESTED("not-tested"),
    /** The rule cannot be applied: the balance is too coarse or the pre-weigh mass is missing. */
    UNKNOWN("unknown");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The stable word. */
    public String word() {
      return word;
    }
  }

  /**
   * Judges successive masses of one filter, oldest first. Only the last two decide: constancy found
   * earlier and lost again is not constancy. Arithmetic is exact.
   *
   * <p>Edges: no or one mass is not tested; without a rule nothing is tested; a resolution coarser
   * than allowed is unknown; a rule whose percentage needs the residue is unknown without the
   * pre-weigh mass; of a residue of zero a percentage leaves no limit, so that only an unchanged
   * mass passes, as it does under every rule (two masses that differ by less than the displayed
   * step show no change).
   *
   * @param rule the method's rule, or null where it has none
   * @param masses the masses in order of weighing
   * @param preMass the filter's pre-weigh mass, or null
   * @param resolution the balance's displayed step, or null where it is not known
   * @param coarsest the coarsest step the method allows, or null
   */
  public static ConstantVerdict of(
      @Nullable ConstantRule rule,
      List<Mass> masses,
      @Nullable Mass preMass,
      @Nullable Mass resolution,
      @Nullable Mass coarsest) {
    if (rule == null) {
      return new ConstantVerdict(Kind.NOT_TESTED, null, null, ConstantSays.NO_TEST.with());
    }
    if (masses.size() < 2) {
      return new ConstantVerdict(Kind.NOT_TESTED, null, null, ConstantSays.WEIGHED_ONCE.with());
    }
    return ConstantJudge.judge(rule, masses, preMass, resolution, coarsest);
  }

  /** True for {@link Kind#CONSTANT}. */
  public boolean isConstant() {
    return kind == Kind.CONSTANT;
  }
}
