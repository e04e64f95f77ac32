package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.Reading;

/**
 * The matcher that reads eight bytes at a time against the plain one, byte by byte: the same
 * reading, or the same reason, for every line of every format drawn here. Lines stand in the middle
 * of other bytes, and at the very end of an array.
 */
class CompiledMatcherTest {

  private SplittableRandom random = new SplittableRandom();
  private Drawn drawn = new Drawn(random);
  private int read;

  @Test
  void aShortRunOfDrawnFormats() {
    run(new SplittableRandom().nextLong(), 4000);
    assertTrue(read > 5000, () -> "only " + read + " lines were read");
  }

  @Test
  @Tag("long")
  void aLongRunOfDrawnFormats() {
    run(new SplittableRandom().nextLong(), 60_000);
  }

  private void run(long seed, int formats) {
    random = new SplittableRandom(seed);
    drawn = new Drawn(random);
    for (int i = 0; i < formats; i++) {
      LineFormat format = drawn.format();
      if (format != null) {
        lines(format, seed);
      }
    }
  }

  private void lines(LineFormat format, long seed) {
    LineParser ours = format.parser();
    ReferenceParser plain = new ReferenceParser(format);
    for (int i = 0; i < 60; i++) {
      String line = random.nextInt(10) == 0 ? drawn.noise(random.nextInt(30)) : drawn.line(format);
      if (random.nextInt(3) > 0) {
        line = drawn.damaged(line);
      }
      String behind = random.nextInt(3) == 0 ? "" : drawn.noise(random.nextInt(12));
      same(ours, plain, line, behind, seed);
    }
  }

  private void same(LineParser ours, ReferenceParser plain, String line, String behind, long seed) {
    String front = drawn.noise(random.nextInt(4));
    byte[] bytes = (front + line + behind).getBytes(ISO_8859_1);
    int from = front.length();
    int to = from + line.length();
    Reading expected = plain.parse(bytes, from, to, 7, Instant.EPOCH);
    Reading found = ours.parse(bytes, from, to, 7, Instant.EPOCH);
    String what = "seed " + seed + ", line \"" + Visible.show(line) + "\"\n";
    assertEquals(expected, found, () -> what + FormatText.print(ours.format()));
    assertEquals(plain.why(), ours.why(), () -> what + FormatText.print(ours.format()));
    read += found == null ? 0 : 1;
  }
}
