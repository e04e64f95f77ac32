package org.siltbench.calc.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

final class RunningSummaryTest {

  @Test
  void streamAndArrayAgree() {
    double[] x = {3.1, -2.2, 5.5, 0.01, 7.25, 7.25};
    RunningSummary stream = new RunningSummary();
    for (double v : x) {
      stream.add(v);
    }
    Summary array = Summary.of(x);
    assertEquals(array.mean(), stream.summary().mean(), 1e-14);
    assertEquals(array.deviation(), stream.summary().deviation(), 1e-14);
    assertEquals(6, stream.count());
    assertEquals(6, stream.summary().n());
    assertEquals(-2.2, stream.low());
    assertEquals(7.25, stream.high());
  }

  @Test
  void mergedHalvesAreTheWhole() {
    RunningSummary left = new RunningSummary();
    RunningSummary right = new RunningSummary();
    RunningSummary whole = new RunningSummary();
    for (int i = 0; i < 1000; i++) {
      double v = Math.sin(i) * 10 + 1e6;
      (i % 3 == 0 ? left : right).add(v);
      whole.add(v);
    }
    left.merge(right);
    assertEquals(whole.count(), left.count());
    assertEquals(whole.summary().mean(), left.summary().mean(), 1e-9);
    assertEquals(whole.summary().deviation(), left.summary().deviation(), 1e-9);
    assertEquals(whole.low(), left.low());
    assertEquals(whole.high(), left.high());
  }

  @Test
  void mergingNothingChangesNothingAndMergingIntoNothingCopies() {
    RunningSummary some = new RunningSummary();
    some.add(2);
    some.add(4);
    some.merge(new RunningSummary());
    assertEquals(new Summary(2, 3, Math.sqrt(2)), some.summary());
    RunningSummary none = new RunningSummary();
    none.merge(some);
    assertEquals(some.summary(), none.summary());
    assertEquals(2, none.low());
    assertEquals(4, none.high());
  }

  @Test
  void anEmptyStreamHasNothingToSayAndOneValueNoDeviation() {
    RunningSummary s = new RunningSummary();
    assertEquals(0, s.count());
    assertThrows(IllegalStateException.class, s::summary);
    assertThrows(IllegalStateException.class, s::low);
    assertThrows(IllegalStateException.class, s::high);
    s.add(5);
    assertTrue(Double.isNaN(s.summary().deviation()));
  }

  @Test
  void aBadValueIsRefusedAndLeavesTheRestAsItWas() {
    RunningSummary s = new RunningSummary();
    s.add(1);
    s.add(3);
    assertThrows(IllegalArgumentException.class, () -> s.add(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> s.add(Double.NEGATIVE_INFINITY));
    assertEquals(new Summary(2, 2, Math.sqrt(2)), s.summary());
  }

  /** NIST StRD NumAcc3 (check values A7), certified 1000000.2 and 0.1. */
  @Test
  void numericalAccuracyThreeOfNistStrdByStream() {
    RunningSummary s = new RunningSummary();
    s.add(1000000.2);
    for (int i = 0; i < 500; i++) {
      s.add(1000000.1);
      s.add(1000000.3);
    }
    assertEquals(1000000.2, s.summary().mean(), 1e-9);
    assertEquals(0.1, s.summary().deviation(), 1e-9);
  }

  /** Ten million samples: a stream of one object, no array. */
  @Test
  void tenMillionValuesNeedNoMemory() {
    RunningSummary s = new RunningSummary();
    for (int i = 0; i < 10_000_000; i++) {
      s.add(i % 2 == 0 ? 1 : -1);
    }
    assertEquals(10_000_000, s.count());
    assertEquals(0, s.summary().mean(), 1e-12);
    assertEquals(Math.sqrt(1e7 / (1e7 - 1)), s.summary().deviation(), 1e-12);
  }
}
