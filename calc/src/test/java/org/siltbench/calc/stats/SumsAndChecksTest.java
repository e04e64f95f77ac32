package org.siltbench.calc.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

final class SumsAndChecksTest {

  @Test
  void compensatedSumKeepsWhatPlainAdditionLoses() {
    assertEquals(2.0, CompensatedSum.of(1, 1e100, 1, -1e100));
    assertEquals(0.0, CompensatedSum.of());
    CompensatedSum s = new CompensatedSum();
    for (int i = 0; i < 1_000_000; i++) {
      s.add(0.1);
    }
    assertEquals(100_000.0, s.value(), 1e-10);
    assertEquals(Double.POSITIVE_INFINITY, CompensatedSum.of(1, Double.POSITIVE_INFINITY, 2));
    assertTrue(Double.isNaN(CompensatedSum.of(1, Double.NaN)));
  }

  @Test
  void checksNameTheValueAndItsLimit() {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> Checked.within(5, 0, 1, "x"));
    assertEquals("x must lie from 0.0 to 1.0: 5.0", e.getMessage());
    assertEquals(0, Checked.within(0, 0, 1, "x"));
    assertEquals(1, Checked.within(1, 0, 1, "x"));
    assertThrows(IllegalArgumentException.class, () -> Checked.within(-0.1, 0, 1, "x"));
    assertThrows(IllegalArgumentException.class, () -> Checked.within(Double.NaN, 0, 1, "x"));
    assertThrows(IllegalArgumentException.class, () -> Checked.positive(0, "x"));
    assertEquals(1e-300, Checked.positive(1e-300, "x"));
    assertEquals(0, Checked.notNegative(0, "x"));
    assertThrows(IllegalArgumentException.class, () -> Checked.notNegative(-1e-300, "x"));
    assertEquals(0.5, Checked.probability(0.5, "p"));
    assertThrows(IllegalArgumentException.class, () -> Checked.probability(Double.NaN, "p"));
    assertEquals(2, Checked.atLeast(2, 2, "n"));
    assertThrows(IllegalArgumentException.class, () -> Checked.atLeast(1, 2, "n"));
    assertEquals(3.5, Checked.finite(3.5, "x"));
  }
}
