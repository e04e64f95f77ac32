package org.siltbench.balance.stable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The priors are the shares and ranges of the measure's physics (docs/stability.md). */
class ShapeTest {

  private static final double CHARGED = 0.33 / 2 / Math.log(10);
  private static final double WARM = 0.33 / Math.log(9);

  private static Shape.Decay decay(double tau) {
    return new Shape.Decay(tau, 2);
  }

  @Test
  void anExponentialIsOneAtTheBeginningAndGrowsBackwards() {
    assertEquals(1, decay(3).at(2, 2));
    assertEquals(Math.exp(-1), decay(3).at(5, 2), 1e-12);
    assertEquals(Math.E - 1, decay(3).growth(3), 1e-12);
  }

  @Test
  void whatSinksIsASettlingOrACharge() {
    assertEquals(2 * 0.03, decay(17.9).sinking(), 1e-12);
    assertEquals(2 * 0.3 * CHARGED, decay(18).sinking(), 1e-12);
    assertEquals(2 * 0.3 * CHARGED, decay(27.9).sinking(), 1e-12);
    assertEquals(2 * CHARGED, decay(28).sinking(), 1e-12);
    assertEquals(2 * CHARGED, decay(319).sinking(), 1e-12);
    assertEquals(0, decay(320).sinking());
  }

  @Test
  void whatRisesMayBeAWarmFilterToo() {
    assertEquals(2 * 0.03, decay(10).rising(), 1e-12);
    assertEquals(decay(18).sinking(), decay(18).rising(), 1e-12);
    assertEquals(decay(18.1).sinking() + 2 * WARM, decay(18.1).rising(), 1e-12);
    assertEquals(decay(199).sinking() + 2 * WARM, decay(199).rising(), 1e-12);
    assertEquals(decay(200).sinking(), decay(200).rising(), 1e-12);
  }

  @Test
  void moistureIsSlow() {
    assertEquals(0, decay(174).moist());
    assertEquals(2 * 175 / 1020.0, decay(175).moist(), 1e-12);
    assertEquals(2 * 740 / 1020.0, decay(740).moist(), 1e-12);
  }

  @Test
  void aSettlingIsQuickerThanAnyDrift() {
    assertTrue(decay(17.9).isQuick());
    assertFalse(decay(18).isQuick());
  }

  @Test
  void creepGrowsWithTheLogarithmOfTheTimeUnderLoadAndALineFromTheBeginning() {
    assertEquals(Math.log(2), new Shape.Creep().at(5, 3), 1e-12);
    assertEquals(3, new Shape.Line().at(5, 2));
  }
}
