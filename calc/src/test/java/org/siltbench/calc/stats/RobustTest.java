package org.siltbench.calc.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.junit.jupiter.api.Test;

final class RobustTest {

  /** Reference: SciPy 1.17.1, median_abs_deviation(x, scale='normal') = 0.6597579872349932. */
  @Test
  void twoFiltersStuckTogetherDoNotMoveTheWindow() {
    Robust r = Robust.of(125.31, 125.9, 124.7, 126.2, 250.9, 125.5);
    assertEquals(6, r.n());
    assertEquals(125.7, r.median(), 1e-12);
    assertEquals(0.6597579872349932, r.deviation(), 1e-5);
    assertTrue(r.holds(126.2, 5));
    assertFalse(r.holds(250.9, 5));
    assertFalse(r.holds(0.5, 5));
  }

  @Test
  void scaleFactorIsOneOverTheNormalThirdQuartile() {
    assertEquals(1 / Quantiles.normal(0.75), Robust.NORMAL_CONSISTENCY, 1e-12);
  }

  @Test
  void windowIncludesItsEnds() {
    Robust r = new Robust(5, 10, 2);
    assertTrue(r.holds(20, 5));
    assertTrue(r.holds(0, 5));
    assertFalse(r.holds(20.0001, 5));
    assertThrows(IllegalArgumentException.class, () -> r.holds(10, 0));
  }

  @Test
  void oddNumberTakesTheMiddleAndMoreThanHalfEqualHasNoSpread() {
    assertEquals(new Robust(5, 3, 0), Robust.of(3, 9, 3, 3, -4));
    assertEquals(new Robust(1, 7, 0), Robust.of(7));
    assertThrows(IllegalArgumentException.class, Robust::of);
    assertThrows(IllegalArgumentException.class, () -> Robust.of(Double.NaN));
  }

  @Property(tries = 200)
  void medianAgreesWithCommonsMath(
      @ForAll @Size(min = 1, max = 31) List<@DoubleRange(min = -1e3, max = 1e3) Double> drawn) {
    double[] values = drawn.stream().mapToDouble(Double::doubleValue).toArray();
    assertEquals(new Median().evaluate(values), Robust.of(values).median(), 1e-12);
  }
}
