package org.siltbench.balance.link;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HexFormat;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.siltbench.balance.BalanceException;
import org.siltbench.balance.Timebase;

/** RFC 2217 against a small port server of the test's own, byte for byte. */
@Timeout(60)
class PortControlTest {

  private PortServer server;

  @BeforeEach
  void start() throws IOException {
    server = new PortServer();
  }

  @AfterEach
  void stop() throws IOException {
    server.close();
  }

  private Link link(String keys) {
    LinkSpec spec = LinkSpec.parse("tcp:127.0.0.1:" + server.port() + "?rfc2217=yes" + keys);
    return new TcpLink((LinkSpec.Tcp) spec, Timebase.system());
  }

  @Test
  void theSpeedGoesOutAsRfc2217WritesIt() throws Exception {
    // RFC 2217, SET-BAUDRATE: 9600 baud is FF FA 2C 01 00 00 25 80 FF F0
    try (Connection connection = link("").connect()) {
      assertTrue(server.heardHex().contains("fffa2c0100002580fff0"), server.heardHex());
      assertEquals("[9600, 8, 1, 1]", server.settings());
    }
  }

  @Test
  void bitsParityAndStopBitsCarryTheNumbersOfRfc2217() throws Exception {
    // RFC 2217: data size in bits; parity 3 even; stop size 2 two bits
    try (Connection connection = link("&bits=7&parity=even&stop=2&baud=2400").connect()) {
      assertEquals("[2400, 7, 3, 2]", server.settings());
    }
  }

  @Test
  void anFfInsideASettingIsDoubled() throws Exception {
    // 65535 baud = 00 00 FF FF; RFC 2217 sends each FF twice
    try (Connection connection = link("&baud=65535").connect()) {
      assertTrue(server.heardHex().contains("fffa2c010000fffffffffff0"), server.heardHex());
      assertEquals("[65535, 8, 1, 1]", server.settings());
    }
  }

  @Test
  void dataComesThroughWithFfUndoubledAndCommandsTakenOut() throws Exception {
    try (Connection connection = link("").connect()) {
      // "a" FF "b", a NOP, then NOTIFY-MODEMSTATE (107), then "c"
      server.sendRaw(HexFormat.of().parseHex("61ffff62fff1fffa2c6b30fff063"));
      assertArrayEquals(
          HexFormat.of().parseHex("61ff6263"), LinkContract.readAtLeast(connection, 4));
    }
  }

  @Test
  void dataSentHasItsFfDoubledAndArrivesWhole() throws Exception {
    try (Connection connection = link("").connect()) {
      connection.write(HexFormat.of().parseHex("50ff0d"));
      assertArrayEquals(HexFormat.of().parseHex("50ff0d"), server.awaitData(3));
    }
  }

  @Test
  void dataThatComesBeforeTheAnswersIsKept() throws Exception {
    server.greetWith("  0.1234 g\r\n");
    try (Connection connection = link("").connect()) {
      assertArrayEquals(
          LinkContract.bytes("  0.1234 g\r\n"), LinkContract.readAtLeast(connection, 12));
    }
  }

  @Test
  void aFarEndThatRefusesSaysSo() {
    server.refuse();
    Exception e = assertThrows(BalanceException.class, () -> link("").connect());
    assertTrue(e.getMessage().contains("refuses port control"), e.getMessage());
  }

  @Test
  void aFarEndThatSetsSomethingElseIsNotTrusted() {
    server.answerBaudWith(4800);
    Exception e = assertThrows(BalanceException.class, () -> link("").connect());
    assertTrue(e.getMessage().contains("4800"), e.getMessage());
  }

  @Test
  void aFarEndThatIsNoPortServerIsFoundOut() {
    server.staySilent();
    Exception e = assertThrows(BalanceException.class, () -> link("").connect());
    assertTrue(e.getMessage().contains("does not answer"), e.getMessage());
  }
}
