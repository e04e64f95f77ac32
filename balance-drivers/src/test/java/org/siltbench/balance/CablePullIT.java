package org.siltbench.balance;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.link.TestPty;

/**
 * A real pseudo-terminal pulled at random moments, in the middle of lines too: no mass that was not
 * sent whole, and readings again within two seconds of the port's return.
 */
@Timeout(1200)
class CablePullIT {

  /** Only these two masses are ever sent, so any other is made of halves. */
  private static final String[] SENT = {"+  0.11111 g\r\n", "+ 22.22222 g\r\n"};

  @TempDir Path folder;

  @Test
  void twentyPulls() throws Exception {
    pull(20);
  }

  @Test
  @Tag("long")
  void twoHundredPulls() throws Exception {
    pull(200);
  }

  private void pull(int times) throws Exception {
    long seed = System.nanoTime();
    SplittableRandom random = new SplittableRandom(seed);
    Path link = folder.resolve("balance");
    Timebase time = Timebase.system();
    try (TestPty pty = new TestPty(link);
        ReadingSource source = new Balances(time, folder).open(LinkSpec.parse("serial:" + link))) {
      for (int i = 0; i < times; i++) {
        talk(pty, random);
        readSome(source, seed);
        pty.pullOut();
        awaitLoss(source, seed);
        pty.plugIn();
        long back = time.nanos();
        awaitReading(pty, source, seed);
        double seconds = (time.nanos() - back) / 1e9;
        assertTrue(seconds < 2, "seed " + seed + ": back after " + seconds + " s");
      }
    }
  }

  /** Some whole lines and then a piece of one: what a pull in mid-line leaves behind. */
  private static void talk(TestPty pty, SplittableRandom random) throws IOException {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < 5; i++) {
      out.append(SENT[random.nextInt(2)]);
    }
    String last = SENT[random.nextInt(2)];
    out.append(last, 0, random.nextInt(last.length()));
    pty.send(out.toString().getBytes(ISO_8859_1));
  }

  private static void readSome(ReadingSource source, long seed) throws InterruptedException {
    for (int i = 0; i < 3; i++) {
      check(source.next(Duration.ofMillis(50)), seed);
    }
  }

  private static void awaitLoss(ReadingSource source, long seed) throws InterruptedException {
    SourceEvent event = source.next(Duration.ofSeconds(1));
    while (!(event instanceof SourceEvent.Lost)) {
      check(event, seed);
      event = source.next(Duration.ofSeconds(1));
    }
  }

  /** A live balance begins with the rest of a line. */
  private static void awaitReading(TestPty pty, ReadingSource source, long seed) throws Exception {
    SourceEvent event = source.next(Duration.ofMillis(50));
    while (!(event instanceof SourceEvent.Read)) {
      if (event instanceof SourceEvent.Back) {
        pty.send(("2222 g\r\n" + SENT[1]).getBytes(ISO_8859_1));
      }
      event = source.next(Duration.ofMillis(50));
    }
    check(event, seed);
  }

  private static void check(SourceEvent event, long seed) {
    if (event instanceof SourceEvent.Read read) {
      String raw = read.reading().raw() + "\r\n";
      assertTrue(raw.equals(SENT[0]) || raw.equals(SENT[1]), "seed " + seed + ": " + raw);
      assertEquals(
          raw.equals(SENT[0]) ? 111_110_000L : 22_222_220_000L, read.reading().mass().nanograms());
    }
  }
}
