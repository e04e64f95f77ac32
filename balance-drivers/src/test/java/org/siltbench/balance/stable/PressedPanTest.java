package org.siltbench.balance.stable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.Reading;
import org.siltbench.calc.quantity.Mass;

class PressedPanTest {

  private final PressedPan pan = new PressedPan(PanSettings.usual());

  private List<PanEvent> press(double second, String grams, Reading.Mark mark) {
    return pan.accept(
        new Reading(
            Reading.Kind.MASS,
            Mass.ofGrams(grams),
            grams,
            "g",
            mark,
            grams + " g",
            Math.round(second * 1e9),
            Instant.EPOCH));
  }

  private List<PanEvent> press(double second, String grams) {
    return press(second, grams, Reading.Mark.NONE);
  }

  private PanEvent.Accepted accepted(List<PanEvent> events) {
    return assertInstanceOf(PanEvent.Accepted.class, events.get(0), events::toString);
  }

  @Test
  void twoPressesFiveSecondsApartAndWithinOneStepAreTaken() {
    press(0, "0.00001");
    press(10, "0.12870");
    PanEvent.Accepted taken = accepted(press(15, "0.12871"));
    assertEquals("0.12871", taken.stable().digits());
    assertEquals(Mass.ofGrams("0.12870"), taken.net());
    assertEquals(2, taken.stable().evidence().size());
    assertEquals(Mass.ofMilligrams("0.01"), taken.stable().resolution());
    // two readings one step of 0.01 mg apart: standard deviation 0.01/√2 mg
    assertEquals(0.00707, taken.stable().standardUncertaintyMg(), 1e-5);
  }

  @Test
  void onePressOrTwoInHasteAreNotTaken() {
    press(0, "0.00000");
    assertFalse(press(10, "0.12870").stream().anyMatch(PanEvent.Accepted.class::isInstance));
    assertInstanceOf(PanEvent.Hint.class, press(14.9, "0.12870").get(0));
    accepted(press(15.1, "0.12870"));
  }

  @Test
  void aValueThatStillMovesBeginsAnew() {
    press(0, "0.00000");
    press(10, "0.12870");
    assertInstanceOf(PanEvent.Hint.class, press(16, "0.12890").get(0));
    assertInstanceOf(PanEvent.Hint.class, press(20, "0.12890").get(0));
    accepted(press(21.5, "0.12890"));
  }

  @Test
  void aLineThatTheBalanceItselfCallsMovingCountsForNothing() {
    press(0, "0.00000");
    press(10, "0.12870");
    assertInstanceOf(PanEvent.Hint.class, press(16, "0.12870", Reading.Mark.MOVING).get(0));
    accepted(press(17, "0.12870", Reading.Mark.STABLE));
  }

  @Test
  void theNextLoadIsTakenOnlyAfterAPrintOfTheEmptyPan() {
    press(0, "0.00000");
    press(10, "0.12870");
    accepted(press(16, "0.12870"));
    assertInstanceOf(PanEvent.Hint.class, press(30, "0.11234").get(0));
    assertInstanceOf(PanEvent.Hint.class, press(40, "0.11234").get(0));
    assertInstanceOf(PanEvent.Unloaded.class, press(50, "0.00000").get(0));
    press(60, "0.11234");
    accepted(press(66, "0.11234"));
  }

  @Test
  void aLostLinkAsksForTheEmptyPanAgain() {
    press(0, "0.00000");
    press(10, "0.12870");
    pan.linkLost();
    assertInstanceOf(PanEvent.Hint.class, press(16, "0.12870").get(0));
  }

  @Test
  void anEmptyPanOffZeroAndAMassOutsideTheWindowAreTold() {
    assertInstanceOf(PanEvent.Rezero.class, press(0, "0.00070").get(0));
    press(10, "0.00000");
    press(20, "3.00000");
    PanEvent.Refused no = (PanEvent.Refused) press(26, "3.00000").get(0);
    assertTrue(no.why().contains("Two filters"), no::why);
  }
}
