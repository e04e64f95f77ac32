package org.siltbench.balance.stable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class StandstillTest {

  private final Standstill still = new Standstill();

  /** Seconds from the first equal reading until it is long enough. */
  private double lasts(double rate, double value) {
    for (int i = 0; i < 1000; i++) {
      still.add(100 + i / rate, value);
      if (still.longEnough()) {
        return i / rate;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  @Test
  void fifteenSecondsAndTheTimeOfTenReadingsAreAskedFor() {
    assertEquals(16, lasts(10, 7), 0.15);
    assertEquals(7, still.value());
    assertEquals(100, still.since());
  }

  @Test
  void aSlowBalanceIsWatchedForTenReadingsMore() {
    assertEquals(25, lasts(1, 7), 1.01);
  }

  @Test
  void anotherDigitBeginsAnew() {
    lasts(10, 7);
    still.add(150, 8);
    assertFalse(still.longEnough());
    assertEquals(150, still.since());
    still.add(150.1, 7);
    assertFalse(still.longEnough());
    assertEquals(7, still.value());
  }

  @Test
  void nothingIsLongEnoughAfterItWasCleared() {
    lasts(10, 7);
    assertTrue(still.longEnough());
    still.clear();
    assertFalse(still.longEnough());
    still.add(200, 7);
    assertFalse(still.longEnough());
    assertEquals(200, still.since());
  }
}
