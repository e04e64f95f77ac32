package org.siltbench.calc.constant;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;

/**
 * When two successive weighings count as the same mass. The published texts differ by edition, so
 * every choice is part of the rule.
 *
 * <p>The limit is the absolute limit, or the percentage of the base, or the lesser of both where
 * both are set. At least one is set.
 *
 * @param absolute the limit as a mass, above zero; null where the rule has none
 * @param percent the limit in per cent of the base, above zero and at most 100; null where the rule
 *     has none
 * @param base what the percentage is taken of, at the previous weighing
 * @param direction whether the text speaks of a loss or of a change
 * @param strict true for "less than the limit", false for "not more than the limit"
 */
public record ConstantRule(
    @Nullable Mass absolute,
    @Nullable BigDecimal percent,
    Base base,
    Direction direction,
    boolean strict) {

  /** What a percentage is taken of. */
  public enum Base {
    /** The residue: previous mass less the filter's pre-weigh mass. */
    RESIDUE,
    /** All that lay on the pan: filter and residue. */
    FILTER_AND_RESIDUE
  }

  /** Which way a change is judged. */
  public enum Direction {
    /**
     * The text limits a loss, strictly or not; a gain passes up to and including the limit, and
     * beyond it is not constant.
     */
    LOSS,
    /** The text limits the change both ways alike. */
    BOTH
  }

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /**
   * @throws IllegalArgumentException if no limit is set or one is not above zero
   */
  public ConstantRule {
    if (absolute == null && percent == null) {
      throw new IllegalArgumentException("a constant-mass rule needs a limit");
    }
    if (absolute != null && absolute.nanograms() <= 0) {
      throw new IllegalArgumentException("limit not above zero: " + absolute);
    }
    if (percent != null && (percent.signum() <= 0 || percent.compareTo(HUNDRED) > 0)) {
      throw new IllegalArgumentException("limit not within 0 to 100 %: " + percent);
    }
    percent = percent == null ? null : percent.stripTrailingZeros();
  }

  /** A rule with an absolute limit only, judged both ways. */
  public static ConstantRule within(Mass limit, boolean strict) {
    return new ConstantRule(limit, null, Base.FILTER_AND_RESIDUE, Direction.BOTH, strict);
  }

  /** True when the limit depends on the residue, so that the pre-weigh mass must be known. */
  public boolean needsPreMass() {
    return percent != null && base == Base.RESIDUE;
  }

  /**
   * The limit in force: min(absolute, |base|·percent/100).
   *
   * @param baseMass the previous mass, less the pre-weigh mass where the base is the residue; its
   *     sign is ignored
   * @return the limit, rounded down to a whole nanogram
   */
  public Mass limit(Mass baseMass) {
    if (percent == null) {
      return Objects.requireNonNull(absolute);
    }
    BigDecimal share =
        BigDecimal.valueOf(baseMass.abs().nanograms())
            .multiply(percent)
            .divide(HUNDRED, 0, RoundingMode.FLOOR);
    Mass relative = new Mass(share.longValueExact());
    return absolute != null && absolute.compareTo(relative) < 0 ? absolute : relative;
  }

  /**
   * True when a change passes; an unchanged mass always does, whatever the limit.
   *
   * @param change the later mass less the earlier
   * @param limit as {@link #limit} gave it
   */
  boolean passes(Mass change, Mass limit) {
    int side = change.abs().compareTo(limit);
    boolean lenient = !strict || (direction == Direction.LOSS && !change.isNegative());
    return change.nanograms() == 0 || (lenient ? side <= 0 : side < 0);
  }
}
