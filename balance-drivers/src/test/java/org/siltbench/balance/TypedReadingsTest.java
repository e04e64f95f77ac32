package org.siltbench.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.MassUnit;

class TypedReadingsTest {

  private static final Duration SOON = Duration.ofMillis(20);

  private final TypedReadings typed =
      new TypedReadings(LineFormat.standard().expecting(MassUnit.GRAM), Timebase.system());

  @Test
  void aTypedLineIsReadByTheFormatLikeAnyOther() throws Exception {
    assertTrue(typed.type("0.12345"));
    Reading reading = ((SourceEvent.Read) typed.next(SOON)).reading();
    assertEquals(123_450_000, reading.mass().nanograms());
    assertTrue(typed.next(SOON) instanceof SourceEvent.Quiet);
  }

  @Test
  void aTypedLineInAnotherUnitIsNotRead() throws Exception {
    assertTrue(typed.type("123.45 mg"));
    assertTrue(typed.next(SOON) instanceof SourceEvent.Unreadable);
  }

  @Test
  void whatNobodyReadsIsBoundedAndRefusedAtTheDoor() {
    for (int i = 0; i < 100; i++) {
      assertTrue(typed.type("1.0 g"));
    }
    assertFalse(typed.type("1.0 g"));
    assertFalse(typed.type("9".repeat(10_000)));
  }

  @Test
  void onceClosedItHasEnded() throws Exception {
    typed.close();
    assertTrue(typed.next(SOON) instanceof SourceEvent.Ended);
    assertFalse(typed.type("1.0 g"));
  }
}
