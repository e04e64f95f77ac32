package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.Reading;
import org.siltbench.balance.format.LineReader.Found;

/**
 * Random and mutated lines: nothing throws, and a line of a format with check digits, fixed
 * decimals and fixed length is never read as another mass after one to three bytes of it were
 * changed, lost or doubled.
 */
class LineFuzzTest {

  private static final LineFormat CHECKED =
      FormatText.parse(
          FormatText.FIRST_LINE
              + """

              line: mark gap sign blanks number gap unit gap check:xor
              ends: CR LF
              length: 20
              decimals: 5
              unit 'g': g
              mark 'S': stable
              mark 'D': moving
              """);

  private static final Pattern WHOLE =
      Pattern.compile("[SD][ \\t]+[+-]?[ \\t]*[0-9]+\\.[0-9]{5}[ \\t]+g[ \\t]+[0-9A-Fa-f]{2}");

  @Test
  void aShortRun() {
    run(System.nanoTime(), 200_000);
  }

  @Test
  @Tag("long")
  void tenMillionLines() {
    run(System.nanoTime(), 10_000_000);
  }

  private static void run(long seed, int lines) {
    try {
      new Run(seed).lines(lines);
    } catch (RuntimeException | AssertionError e) {
      fail("seed " + seed + ": " + e, e);
    }
  }

  /** One seeded run. */
  private static final class Run {

    private final SplittableRandom random;
    private final LineReader reader = new LineReader(Terminator.CR_LF);
    private final LineParser checked = CHECKED.parser();
    private final LineParser standard = LineFormat.standard().parser();
    private final LineParser standardAgain = LineFormat.standard().parser();
    private final byte[] chunk = new byte[LineReader.MAX_CHUNK];

    Run(long seed) {
      random = new SplittableRandom(seed);
    }

    void lines(int count) {
      for (int i = 0; i < count; i++) {
        switch (i % 3) {
          case 0 -> garbage();
          case 1 -> standardLine();
          default -> mutated();
        }
      }
    }

    /** Any bytes at all, in chunks of any size. */
    private void garbage() {
      int count = 1 + random.nextInt(60);
      for (int i = 0; i < count; i++) {
        chunk[i] =
            (byte)
                (random.nextInt(4) == 0
                    ? random.nextInt(256)
                    : "0.g-+ \r\n".charAt(random.nextInt(8)));
      }
      reader.accept(chunk, count);
      for (Found f = reader.next(); f != Found.NOTHING; f = reader.next()) {
        if (f == Found.LINE) {
          checkDigits(
              standard.parse(reader.bytes(), reader.start(), reader.end(), 1, Instant.EPOCH));
        }
      }
    }

    /** Whatever is read, its digits are its mass. */
    private static void checkDigits(Reading reading) {
      if (reading != null && reading.kind() == Reading.Kind.MASS) {
        int exponent = MassUnit.ofSymbol(reading.unit()).orElseThrow().exponent();
        BigDecimal shown = new BigDecimal(reading.digits()).movePointRight(exponent);
        assertEquals(0, shown.compareTo(BigDecimal.valueOf(reading.mass().nanograms())));
      }
    }

    private void standardLine() {
      long steps = random.nextLong(-2_000_000, 2_000_000);
      BigDecimal grams = BigDecimal.valueOf(steps, 5);
      byte[] line = String.format(Locale.ROOT, "%+10.5f g", grams).getBytes(ISO_8859_1);
      Reading reading = parse(standardAgain, line);
      assertEquals(grams.movePointRight(9).longValueExact(), reading.mass().nanograms());
    }

    /** Mostly with other bytes behind the line, as in a block; then a known layout is used. */
    private Reading parse(LineParser parser, byte[] line) {
      int behind = random.nextInt(4) == 0 ? 0 : 8;
      byte[] bytes = Arrays.copyOf(line, line.length + behind);
      return parser.parse(bytes, 0, line.length, 1, Instant.EPOCH);
    }

    /** A good line is read as it is; a damaged one is not read, or as the same mass. */
    private void mutated() {
      long steps = random.nextLong(0, 2_000_000);
      String body =
          String.format(
              Locale.ROOT,
              "%s %s%12.5f g ",
              random.nextBoolean() ? "S" : "D",
              random.nextBoolean() ? "-" : "+",
              steps / 1e5);
      byte[] good = (body + String.format(Locale.ROOT, "%02X", xor(body))).getBytes(ISO_8859_1);
      Reading whole = parse(checked, good);
      assertEquals(
          steps * 10_000, whole.mass().abs().nanograms(), () -> new String(good, ISO_8859_1));
      byte[] bad = damage(good);
      Reading read = parse(checked, bad);
      checkDigits(read);
      if (read != null) {
        // by other means: what was read is a whole line of the format, check digits and all
        String line = new String(bad, ISO_8859_1);
        assertTrue(WHOLE.matcher(line).matches() && line.length() == 20, line);
        assertEquals(xor(line.substring(0, 18)), Integer.parseInt(line.substring(18), 16), line);
      }
    }

    private static int xor(String text) {
      return text.chars().reduce(0, (a, b) -> a ^ b);
    }

    private byte[] damage(byte[] good) {
      StringBuilder text = new StringBuilder(new String(good, ISO_8859_1));
      int times = 1 + random.nextInt(3);
      for (int i = 0; i < times; i++) {
        int at = random.nextInt(text.length());
        switch (random.nextInt(3)) {
          case 0 -> text.setCharAt(at, (char) random.nextInt(256));
          case 1 -> text.deleteCharAt(at);
          default -> text.insert(at, text.charAt(at));
        }
      }
      return text.toString().getBytes(ISO_8859_1);
    }
  }
}
