package org.siltbench.balance;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.format.FormatException;
import org.siltbench.balance.format.FormatText;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.link.LinkSpec;

/**
 * Files and texts from anywhere: a format, a recording or a balance text either is one, or is
 * refused with a message. Nothing else is thrown, and nothing hangs.
 */
class HostileInputTest {

  private static final String FORMAT =
      """
      siltbench line format 1
      name: heron
      ends: CR LF
      line: 'N' digits gap mark gap sign blanks number gap unit blanks check:xor+1
      length: 29
      point: either
      decimals: 3-5
      unit 'g': g
      supply: mg
      no unit: moving
      units: first seen only
      mark 'ok': stable
      mark '\\x2e.': moving
      text '=OVER=': over
      talks: when asked
      ask: 'P' CR LF
      """;

  private static final String CAPTURE =
      """
      siltbench capture 1
      from: 'practice'
      began: 2026-11-25T10:00:00Z
      0 '0.10000 g\\r\\n'
      100000 '0.10001 g\\r\\n0.1'
      200000 '0002 g\\r\\n'
      """;

  private static final List<String> SPECS =
      List.of(
          "serial:/dev/ttyUSB0?baud=2400&bits=7&parity=even&stop=1.5&format=heron",
          "tcp:10.0.0.7:4001?rfc2217=yes&baud=9600&ask=P%0D%0A&every=500ms",
          "replay:lines.txt?speed=2.5&unit=mg",
          "practice?seed=7",
          "typed?unit=g");

  private static final String SPICE = "0123456789:?&=%'\\\n\r\t .,-+xunitmark\u00b5\u20ac\u0000";

  @TempDir Path folder;

  private SplittableRandom random = new SplittableRandom();

  @Test
  void shortRuns() throws Exception {
    run(5_000, 300);
  }

  @Test
  @Tag("long")
  void longRuns() throws Exception {
    run(3_000_000, 20_000);
  }

  private void run(int texts, int files) throws Exception {
    long seed = new SplittableRandom().nextLong();
    random = new SplittableRandom(seed);
    try {
      for (int i = 0; i < texts; i++) {
        format(damaged(FORMAT));
        spec(damaged(SPECS.get(random.nextInt(SPECS.size()))));
      }
      for (int i = 0; i < files; i++) {
        replay(damaged(CAPTURE));
      }
    } catch (RuntimeException e) {
      fail("seed " + seed, e);
    }
  }

  /** What is taken as a format is written and read back the same, and reads lines without fail. */
  private void format(String text) {
    LineFormat format;
    try {
      format = FormatText.parse(text);
    } catch (FormatException refused) {
      assertTrue(refused.getMessage().startsWith("line "), refused::getMessage);
      return;
    }
    assertEquals(format, FormatText.parse(FormatText.print(format)));
    byte[] line = damaged("N12 ok +  0.12345 g  1F").getBytes(ISO_8859_1);
    Reading unused = format.parser().parse(line, 0, line.length, 0, Instant.EPOCH);
  }

  /** What is taken as a balance text means the same when it is printed and read again. */
  private static void spec(String text) {
    LinkSpec spec;
    try {
      spec = LinkSpec.parse(text);
    } catch (IllegalArgumentException refused) {
      assertTrue(String.valueOf(refused.getMessage()).length() > 10, text);
      return;
    }
    assertEquals(spec, LinkSpec.parse(spec.toString()), text);
  }

  private void replay(String text) throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve("capture.txt"), text);
    VirtualTime time = new VirtualTime(Instant.EPOCH);
    try (ReadingSource source = new Balances(time, folder).open(LinkSpec.parse("replay:" + file))) {
      int events = 0;
      while (!(source.next(Duration.ofDays(400)) instanceof SourceEvent.Ended)) {
        assertTrue(++events < 10_000, text);
      }
    } catch (BalanceException refused) {
      assertTrue(refused.getMessage().endsWith("."), refused::getMessage);
      assertTrue(refused.next().matches("[A-Z].*\\."), refused::next);
    }
  }

  private String damaged(String text) {
    StringBuilder out = new StringBuilder(text);
    for (int i = random.nextInt(4); i > 0 && !out.isEmpty(); i--) {
      int at = random.nextInt(out.length());
      char spice = SPICE.charAt(random.nextInt(SPICE.length()));
      switch (random.nextInt(5)) {
        case 0 -> out.setCharAt(at, spice);
        case 1 -> out.insert(at, spice);
        case 2 -> out.deleteCharAt(at);
        case 3 -> out.insert(at, String.valueOf(spice).repeat(random.nextInt(600)));
        default -> out.delete(at, Math.min(out.length(), at + random.nextInt(30)));
      }
    }
    return out.toString();
  }
}
