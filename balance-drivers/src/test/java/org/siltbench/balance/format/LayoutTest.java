package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.Reading;

/**
 * Whatever a layout reads, the plain matcher reads the same: for formats drawn at random, with
 * lines as long as the one that the layout was drawn up from and much like it.
 */
class LayoutTest {

  private int layouts;
  private int lines;

  @Test
  void aLayoutReadsNothingThatThePlainMatcherReadsOtherwise() {
    run(new SplittableRandom().nextLong(), 4500);
    assertTrue(layouts > 300, () -> "only " + layouts + " layouts");
    assertTrue(lines > 8000, () -> "only " + lines + " lines were read by a layout");
  }

  @Test
  @Tag("long")
  void aLongRunOfLayouts() {
    run(new SplittableRandom().nextLong(), 60_000);
  }

  private static final String TWO_UNITS = "unit 'mg': mg\nunit 'kg': kg\n";
  private static final String SUPPLIED = "supply: g\n";

  @Test
  void whereAFieldCouldBeSwallowedByThePartBeforeItThereIsNoLayout() {
    assertNull(
        layout("line: number mark\nmark '0': stable\nmark 'S': moving\n" + SUPPLIED, "1.5S"));
    assertNotNull(
        layout("line: number mark\nmark 'D': stable\nmark 'S': moving\n" + SUPPLIED, "1.5S"));
    assertNull(layout("line: number check:add\n" + SUPPLIED, "1.50C4"));
    assertNotNull(layout("line: number gap check:add\n" + SUPPLIED, "1.50 E4"));
    String optional = "line: blanks unit? blanks number\n" + TWO_UNITS + SUPPLIED;
    assertNull(layout(optional, "   1.50"));
    assertNotNull(layout(optional, "mg 1.50"));
  }

  @Test
  void anotherUnitOfTheSameWidthIsNotReadByTheLayout() {
    Layout layout = layout("line: number gap unit\n" + TWO_UNITS, "1.50 mg");
    assertNotNull(layout);
    byte[] kilograms = bytes("1.50 kg");
    assertNull(layout.read(kilograms, 1, 8, 7, Instant.EPOCH));
  }

  @Test
  void moreThanEightDigitsAreLeftToTheWalk() {
    Layout layout = layout("line: blanks number gap unit\nunit 'g': g\n", "  12.34567 g");
    assertNotNull(layout);
    assertEquals(123_456_780_000L, grams(layout, " 123.45678 g"));
    assertNull(grams(layout, "1234.56789 g"));
  }

  @Test
  void aSignBehindTheNumberOrFarInFrontOfItCounts() {
    Layout behind = layout("line: number sign gap unit\nunit 'g': g\n", "12.50- g");
    assertNotNull(behind);
    assertEquals(-13_750_000_000L, grams(behind, "13.75- g"));
    assertNull(grams(behind, "13.75+ g"));
    Layout far = layout("line: sign blanks number gap unit\nunit 'g': g\n", "-         2.50 g");
    assertNotNull(far);
    assertEquals(-13_750_000_000L, grams(far, "-        13.75 g"));
    assertEquals(13_750_000_000L, grams(far, "+        13.75 g"));
    assertNull(grams(far, "         13.75 g")); // may be read, but by the walk
    assertNull(grams(far, "x        13.75 g"));
  }

  @Test
  void aByteThatIsNoDigitIsNeverReadAsOne() {
    Layout layout = layout("line: sign blanks number gap unit\nunit 'g': g\n", "-  12.50 g");
    assertNotNull(layout);
    assertEquals(-123_500_000_000L, grams(layout, "- 123.50 g"));
    assertEquals(3_500_000_000L, grams(layout, "+   3.50 g"));
    for (int odd = 0; odd < 256; odd++) {
      String at = Character.toString(odd);
      if (!"0123456789".contains(at)) {
        assertNull(grams(layout, "+  12.5" + at + " g"), at);
        assertNull(grams(layout, "+  1" + at + ".50 g"), at);
        assertNull(grams(layout, "+ 6" + at + "2.50 g"), at);
      }
      if (!"+- ".contains(at)) {
        assertNull(grams(layout, at + "  12.50 g"), at);
      }
    }
  }

  private static Long grams(Layout layout, String line) {
    Reading read = layout.read(bytes(line), 1, 1 + line.length(), 7, Instant.EPOCH);
    return read == null ? null : Objects.requireNonNull(read.mass()).nanograms();
  }

  private static Layout layout(String format, String line) {
    Fields fields = new Fields(FormatText.parse(FormatText.FIRST_LINE + "\n" + format));
    Walk walk = new Walk(fields);
    Match found = new Match(fields.steps.length);
    assertTrue(walk.match(bytes(line), 1, 1 + line.length(), found), line);
    fields.scales.weigh(found);
    return new Columns(fields, walk).of(bytes(line), 1, 1 + line.length(), found);
  }

  private void run(long seed, int formats) {
    SplittableRandom random = new SplittableRandom(seed);
    Drawn drawn = new Drawn(random);
    for (int i = 0; i < formats; i++) {
      LineFormat format = drawn.format();
      if (format != null) {
        learn(format, drawn, seed);
      }
    }
  }

  private void learn(LineFormat format, Drawn drawn, long seed) {
    Fields fields = new Fields(format);
    Walk walk = new Walk(fields);
    Match found = new Match(fields.steps.length);
    for (int i = 0; i < 4; i++) {
      String line = drawn.line(format);
      byte[] bytes = bytes(line);
      if (walk.match(bytes, 1, 1 + line.length(), found)) {
        fields.scales.weigh(found);
        Layout layout = new Columns(fields, walk).of(bytes, 1, 1 + line.length(), found);
        if (layout != null) {
          layouts++;
          compare(layout, format, line, drawn, seed);
        }
      }
    }
  }

  private static byte[] bytes(String line) {
    return ("," + line + "12345.67").getBytes(ISO_8859_1);
  }

  private void compare(Layout layout, LineFormat format, String first, Drawn drawn, long seed) {
    String line = first;
    for (int i = 0; i < 60; i++) {
      byte[] bytes = bytes(line);
      Reading read = layout.read(bytes, 1, 1 + line.length(), 7, Instant.EPOCH);
      if (read != null) {
        lines++;
        String what =
            "seed " + seed + ", line \"" + Visible.show(line) + "\" as \"" + first + "\"\n";
        Reading plain =
            new ReferenceParser(format).parse(bytes, 1, 1 + line.length(), 7, Instant.EPOCH);
        assertEquals(plain, read, () -> what + FormatText.print(format));
      }
      line = drawn.changed(i % 3 == 0 || read == null ? first : line);
    }
  }
}
