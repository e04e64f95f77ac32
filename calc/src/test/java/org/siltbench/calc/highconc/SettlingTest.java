package org.siltbench.calc.highconc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class SettlingTest {

  private static final Settling WATER = Settling.AT_20_CELSIUS;

  /** Check values A9, recomputed: 2 µm quartz, 20 °C. */
  @Test
  void clayOfTwoMicrometres() {
    assertEquals(3.594e-6, WATER.stokes(2e-6, 2650), 6e-10);
  }

  @Test
  void whatIsLighterRisesAndWhatIsNothingStays() {
    assertEquals(-WATER.stokes(1e-5, 998.2 + 50), WATER.stokes(1e-5, 998.2 - 50), 1e-15);
    assertEquals(0, WATER.stokes(0, 2650));
  }

  /** By hand: 60 µm sinks at 3.23 mm/s, Re = 0.193; 70 µm at 4.40 mm/s, Re = 0.307. */
  @Test
  void sandIsTooLargeForStokes() {
    assertTrue(WATER.stokesHolds(60e-6, 2650));
    assertFalse(WATER.stokesHolds(70e-6, 2650));
    assertFalse(WATER.stokesHolds(1e-3, 900));
  }

  @Property(tries = 100)
  void speedGrowsWithTheSquareOfTheDiameter(
      @ForAll @DoubleRange(min = 0.1, max = 100) double micrometres) {
    double v = WATER.stokes(micrometres * 1e-6, 2650);
    assertEquals(4 * v, WATER.stokes(2 * micrometres * 1e-6, 2650), 1e-12 * v);
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Settling(0, 1e-3));
    assertThrows(IllegalArgumentException.class, () -> new Settling(1000, 0));
    assertThrows(IllegalArgumentException.class, () -> WATER.stokes(-1, 2650));
    assertThrows(IllegalArgumentException.class, () -> WATER.stokes(1e-6, 0));
  }
}
