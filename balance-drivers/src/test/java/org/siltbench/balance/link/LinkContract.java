package org.siltbench.balance.link;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.link.Link.Capability;

/** What every link that leads to a far end must do; each link says how its far end is worked. */
@Timeout(60)
abstract class LinkContract {

  static final long SECOND = 1_000_000_000L;

  private Link link;

  /** Makes the far end and the link to it. */
  abstract Link plug() throws Exception;

  /** The far end sends. */
  abstract void send(byte[] bytes) throws Exception;

  /** The far end takes so many bytes. */
  abstract byte[] receive(int count) throws Exception;

  /** The far end goes away. */
  abstract void pullOut() throws Exception;

  /** The far end comes back. */
  abstract void plugInAgain() throws Exception;

  abstract void unplug() throws Exception;

  @BeforeEach
  void begin() throws Exception {
    link = plug();
  }

  @AfterEach
  void end() throws Exception {
    unplug();
  }

  static byte[] bytes(String text) {
    return text.getBytes(ISO_8859_1);
  }

  static byte[] readAtLeast(Connection connection, int count) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] chunk = new byte[64];
    while (out.size() < count) {
      out.write(chunk, 0, connection.read(chunk, SECOND));
    }
    return out.toByteArray();
  }

  private static byte[] everyByte() {
    byte[] out = new byte[256];
    for (int i = 0; i < out.length; i++) {
      out[i] = (byte) i;
    }
    return out;
  }

  @Test
  void bytesArriveAsTheyWereSentWhateverTheyAre() throws Exception {
    try (Connection connection = link.connect()) {
      send(everyByte());
      assertArrayEquals(everyByte(), readAtLeast(connection, 256));
    }
  }

  @Test
  void aQuietFarEndGivesNothingAndNoError() throws Exception {
    try (Connection connection = link.connect()) {
      assertEquals(0, connection.read(new byte[8], SECOND / 20));
      send(bytes("x"));
      assertArrayEquals(bytes("x"), readAtLeast(connection, 1));
    }
  }

  @Test
  void bytesSentArriveAtTheFarEnd() throws Exception {
    assumeTrue(link.capabilities().contains(Capability.SENDS));
    try (Connection connection = link.connect()) {
      connection.write(everyByte());
      assertArrayEquals(everyByte(), receive(256));
    }
  }

  @Test
  void aFarEndThatGoesAwayIsALossAndStaysOne() throws Exception {
    try (Connection connection = link.connect()) {
      send(bytes("abc"));
      readAtLeast(connection, 3);
      pullOut();
      assertThrows(IOException.class, () -> readUntilLost(connection));
      assertThrows(IOException.class, () -> connection.read(new byte[8], SECOND / 20));
    }
  }

  private static void readUntilLost(Connection connection) throws Exception {
    while (true) {
      connection.read(new byte[64], SECOND);
    }
  }

  @Test
  void afterALossTheSameLinkConnectsAgain() throws Exception {
    assumeTrue(link.capabilities().contains(Capability.COMES_BACK));
    try (Connection first = link.connect()) {
      pullOut();
      assertThrows(IOException.class, () -> readUntilLost(first));
    }
    plugInAgain();
    try (Connection second = link.connect()) {
      send(bytes("back"));
      assertArrayEquals(bytes("back"), readAtLeast(second, 4));
    }
  }

  @Test
  void aFarEndThatIsNotThereIsAProblemWithSomethingToDoNext() throws Exception {
    pullOut();
    BalanceException e = assertThrows(BalanceException.class, () -> link.connect());
    assertFalse(e.getMessage().isBlank());
    assertFalse(e.next().isBlank());
    plugInAgain();
  }

  @Test
  void closingFromAnotherThreadEndsAWaitingRead() throws Exception {
    ExecutorService other = Executors.newSingleThreadExecutor();
    try {
      Connection connection = link.connect();
      Callable<Void> endless =
          () -> {
            readUntilLost(connection);
            return null;
          };
      Future<Void> waiting = other.submit(endless);
      connection.close();
      assertThrows(Exception.class, () -> waiting.get(20, TimeUnit.SECONDS));
      assertTrue(waiting.isDone());
    } finally {
      other.shutdownNow();
    }
  }

  @Test
  void itSaysWhatItIsInALinkTextThatLeadsToItAgain() throws Exception {
    assertEquals(link.describe(), LinkSpec.parse(link.describe()).toString());
  }
}
