package org.siltbench.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.Link.Capability;
import org.siltbench.balance.link.LinkSpec;

/** What every link with a clock of its own must do. */
@Timeout(60)
abstract class SimulatedLinkContract {

  private static final long MILLI = 1_000_000L;

  /** A link whose first bytes come later than a millisecond and sooner than a minute. */
  abstract Link link() throws Exception;

  @Test
  void timeStandsStillUntilSomebodyReadsAndThenMovesToTheBytes() throws Exception {
    Link link = link();
    try (Connection connection = link.connect()) {
      long before = link.time().nanos();
      assertEquals(before, link.time().nanos());
      assertTrue(connection.read(new byte[64], 60_000 * MILLI) > 0);
      assertTrue(link.time().nanos() > before + MILLI);
    }
  }

  @Test
  void aWaitThatIsTooShortGivesNothingAndMovesTimeByTheWait() throws Exception {
    Link link = link();
    try (Connection connection = link.connect()) {
      long before = link.time().nanos();
      assertEquals(0, connection.read(new byte[64], MILLI));
      assertEquals(before + MILLI, link.time().nanos());
    }
  }

  @Test
  void bytesCanBeTakenOneByOne() throws Exception {
    try (Connection connection = link().connect()) {
      byte[] one = new byte[1];
      for (int i = 0; i < 40; i++) {
        assertEquals(1, connection.read(one, 60_000 * MILLI));
      }
    }
  }

  @Test
  void onceClosedNothingMoreComes() throws Exception {
    Connection connection = link().connect();
    connection.close();
    assertEquals(Connection.END, connection.read(new byte[64], 60_000 * MILLI));
  }

  @Test
  void itTakesNoBytesAndSaysSo() throws Exception {
    Link link = link();
    assertFalse(link.capabilities().contains(Capability.SENDS));
    try (Connection connection = link.connect()) {
      assertThrows(IOException.class, () -> connection.write(new byte[] {'P'}));
    }
  }

  @Test
  void itSaysWhatItIsInALinkTextThatLeadsToItAgain() throws Exception {
    Link link = link();
    assertEquals(link.describe(), LinkSpec.parse(link.describe()).toString());
  }
}
