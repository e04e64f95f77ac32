package org.siltbench.calc.constant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.siltbench.calc.constant.ConstantRule.Base;
import org.siltbench.calc.constant.ConstantRule.Direction;
import org.siltbench.calc.quantity.Mass;

final class ConstantVerdictProperties {

  private static ConstantRule rule(long limit, Base base, Direction direction, boolean strict) {
    return new ConstantRule(new Mass(limit), new BigDecimal("4"), base, direction, strict);
  }

  private static ConstantVerdict.Kind kind(ConstantRule rule, long pre, long first, long second) {
    List<Mass> masses = List.of(new Mass(first), new Mass(second));
    return ConstantVerdict.of(rule, masses, new Mass(pre), null, null).kind();
  }

  @Property
  void the_verdict_does_not_depend_on_the_unit(
      @ForAll @IntRange(min = 1, max = 1_000_000) int limit,
      @ForAll @IntRange(max = 100_000_000) int pre,
      @ForAll @IntRange(max = 20_000_000) int residue,
      @ForAll @IntRange(min = -2_000_000, max = 2_000_000) int change,
      @ForAll Base base,
      @ForAll Direction direction,
      @ForAll boolean strict) {
    // Multiples of 25 ng keep 4 % whole, so that rounding down to a nanogram plays no part.
    long first = 25L * ((pre + (long) residue) / 25);
    long p = 25L * (pre / 25);
    assertEquals(
        kind(rule(limit, base, direction, strict), p, first, first + change),
        kind(
            rule(1000L * limit, base, direction, strict),
            1000 * p,
            1000 * first,
            1000 * (first + change)));
  }

  @Property
  void the_same_filter_on_a_heavier_dish_gets_the_same_verdict_where_the_residue_is_the_base(
      @ForAll @IntRange(max = 20_000_000) int residue,
      @ForAll @IntRange(min = -1_000_000, max = 1_000_000) int change,
      @ForAll @IntRange(max = 2_000_000_000) int dish) {
    ConstantRule rule = rule(500_000, Base.RESIDUE, Direction.BOTH, true);
    assertEquals(
        kind(rule, 100_000_000L, 100_000_000L + residue, 100_000_000L + residue + change),
        kind(
            rule,
            100_000_000L + dish,
            100_000_000L + dish + residue,
            100_000_000L + dish + residue + change));
  }

  @Property
  void a_smaller_change_the_same_way_never_makes_it_worse(
      @ForAll @IntRange(max = 20_000_000) int residue,
      @ForAll @IntRange(min = -1_000_000, max = 1_000_000) int change,
      @ForAll @IntRange(min = 1, max = 10) int part,
      @ForAll Direction direction,
      @ForAll boolean strict) {
    ConstantRule rule = rule(500_000, Base.RESIDUE, direction, strict);
    boolean whole = kind(rule, 0, residue, residue + change) == ConstantVerdict.Kind.CONSTANT;
    boolean smaller =
        kind(rule, 0, residue, residue + change / part) == ConstantVerdict.Kind.CONSTANT;
    assertTrue(smaller || !whole);
  }

  @Property
  void a_strict_rule_never_passes_what_the_other_refuses(
      @ForAll @IntRange(max = 20_000_000) int residue,
      @ForAll @IntRange(min = -1_000_000, max = 1_000_000) int change,
      @ForAll Direction direction) {
    boolean strict =
        kind(rule(500_000, Base.RESIDUE, direction, true), 0, residue, residue + change)
            == ConstantVerdict.Kind.CONSTANT;
    boolean lenient =
        kind(rule(500_000, Base.RESIDUE, direction, false), 0, residue, residue + change)
            == ConstantVerdict.Kind.CONSTANT;
    assertTrue(lenient || !strict);
  }
}
