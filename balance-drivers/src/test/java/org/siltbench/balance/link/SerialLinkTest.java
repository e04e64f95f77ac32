package org.siltbench.balance.link;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.Timebase;

/** The serial link on real pseudo-terminals; they cannot prove parity or data bits. */
class SerialLinkTest extends LinkContract {

  @TempDir Path folder;
  private TestPty pty;

  private Link to(String path) {
    LinkSpec spec = LinkSpec.parse("serial:" + path + "?baud=2400&bits=7&parity=even");
    return new SerialLink((LinkSpec.Serial) spec, Timebase.system());
  }

  @Override
  Link plug() throws Exception {
    pty = new TestPty(folder.resolve("balance"));
    return new SerialLink(
        (LinkSpec.Serial) LinkSpec.parse("serial:" + pty.link()), Timebase.system());
  }

  @Override
  void send(byte[] bytes) throws Exception {
    pty.send(bytes);
  }

  @Override
  byte[] receive(int count) throws Exception {
    return pty.received().readNBytes(count);
  }

  @Override
  void pullOut() throws Exception {
    pty.pullOut();
  }

  @Override
  void plugInAgain() throws Exception {
    pty.plugIn();
  }

  @Override
  void unplug() throws Exception {
    pty.close();
  }

  @Test
  void aPortIsFoundByItsRealPathAsWellAsByALink() throws Exception {
    try (Connection connection = to(pty.link().toRealPath().toString()).connect()) {
      pty.send(bytes("hello"));
      assertArrayEquals(bytes("hello"), readAtLeast(connection, 5));
    }
  }

  @Test
  void aSecondOwnerIsRefusedByNameOfTheFirstEvenThroughAnotherPath() throws Exception {
    try (Connection first = to(pty.link().toString()).connect()) {
      Link second = to(first.where());
      Exception e = assertThrows(BalanceException.class, second::connect);
      String own = "in use by process " + ProcessHandle.current().pid();
      assertTrue(e.getMessage().contains(own), e.getMessage());
    }
    pty.pullOut();
    pty.plugIn();
    to(pty.link().toString()).connect().close();
  }

  @Test
  @Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void aReadEndsWithItsTimeEvenWhereTheTerminalHasLostItsTimeLimit() throws Exception {
    try (Connection connection = to(pty.link().toString()).connect()) {
      Process stty =
          new ProcessBuilder("stty", "-F", connection.where(), "min", "1", "time", "0").start();
      assertEquals(0, stty.waitFor());
      assertEquals(0, connection.read(new byte[16], 200_000_000L));
      pty.send(bytes("later"));
      assertArrayEquals(bytes("later"), readAtLeast(connection, 5));
    }
  }

  @Test
  void oneHalfPulledWithoutItsLinkRemovedIsNoticedToo() throws Exception {
    try (Connection connection = to(pty.link().toString()).connect()) {
      pty.pullOut();
      assertThrows(java.io.IOException.class, () -> connection.read(new byte[8], 5 * SECOND));
    }
  }
}
