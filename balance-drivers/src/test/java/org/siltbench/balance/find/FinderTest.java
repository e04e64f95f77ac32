package org.siltbench.balance.find;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.LineSettings;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.link.TestPty;

@Timeout(60)
class FinderTest {

  private static final Duration SHORT = Duration.ofMillis(100);
  private static final LinkSpec PORT = LinkSpec.parse("serial:/dev/nowhere");

  /**
   * A line that is readable with one setting only and noise with others, as a wrong speed gives.
   */
  private record Wire(LinkSpec.Serial spec, LineSettings right, boolean silent, List<String> sent)
      implements Link, Connection {

    @Override
    public Set<Capability> capabilities() {
      return EnumSet.of(Capability.SENDS);
    }

    @Override
    public String describe() {
      return spec.toString();
    }

    @Override
    public Timebase time() {
      return Timebase.system();
    }

    @Override
    public Connection connect() {
      return this;
    }

    @Override
    public int read(byte[] into, long atMostNanos) {
      if (silent) {
        return 0;
      }
      String text =
          spec.line().equals(right) ? "  0.1234 g\r\n" : "\u00f8\u0086x\u00e6\u0000\u00fe";
      byte[] bytes = text.getBytes(ISO_8859_1);
      System.arraycopy(bytes, 0, into, 0, bytes.length);
      return bytes.length;
    }

    @Override
    public void write(byte[] bytes) {
      sent.add(new String(bytes, ISO_8859_1));
    }

    @Override
    public String where() {
      return "wire";
    }

    @Override
    public void close() {}
  }

  @Test
  void itGoesOnUntilReadableLinesComeAndSendsNothing() throws Exception {
    LineSettings right = LineSettings.common().get(13);
    List<String> sent = new ArrayList<>();
    Finder finder =
        new Finder(s -> new Wire((LinkSpec.Serial) s, right, false, sent), SHORT, a -> {});
    List<Attempt> tried = finder.search(PORT);
    Attempt last = tried.get(tried.size() - 1);
    assertTrue(last.readable());
    assertEquals(right, ((LinkSpec.Serial) last.spec()).line());
    assertEquals("  0.1234 g", last.lines().get(0));
    assertFalse(tried.get(0).readable());
    assertEquals(List.of(), sent);
  }

  @Test
  void aSilentLineIsGivenUpAfterAFewSettings() throws Exception {
    Finder finder =
        new Finder(
            s -> new Wire((LinkSpec.Serial) s, LineSettings.DEFAULT, true, new ArrayList<>()),
            SHORT,
            a -> {});
    List<Attempt> tried = finder.search(PORT);
    assertEquals(4, tried.size());
    assertTrue(tried.stream().allMatch(Attempt::isSilent));
  }

  @Test
  void onARealPseudoTerminalTheFirstReadableSettingIsTaken(@TempDir Path folder) throws Exception {
    try (TestPty pty = new TestPty(folder.resolve("balance"))) {
      LinkSpec spec = LinkSpec.parse("serial:" + pty.link());
      Finder finder =
          new Finder(
              s -> {
                pty.send("1 g\r\n  0.1 g\r\n  0.2 g\r\n  0.3 g\r\n 0".getBytes(ISO_8859_1));
                return new Balances(Timebase.system(), folder).link(s);
              },
              Duration.ofSeconds(5),
              a -> {});
      List<Attempt> tried = finder.search(spec);
      assertTrue(tried.get(0).readable(), tried.toString());
    }
  }
}
