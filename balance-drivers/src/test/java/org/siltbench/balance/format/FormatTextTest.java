package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.balance.Reading;

class FormatTextTest {

  private static final String HERON =
      """
      siltbench line format 1
      name: heron
      ends: CR LF
      line: STX digits ' ' mark blanks sign blanks number blanks unit? blanks check:xor+1
      point: ,
      decimals: 4-5
      unit 'gm': g
      no unit: moving
      mark 'ok': stable
      mark '..': moving
      mark 'HI': over
      text 'LOW': under
      text 'TIME': ignore
      talks: when asked
      ask: ESC 'P' CR
      tare: 'T' CR LF
      """
          .replace("STX", "'\\x02'");

  private static String withXor(String body) {
    int xor = 0;
    for (char c : body.substring(1).toCharArray()) {
      xor ^= c;
    }
    return body + String.format("%02X", xor);
  }

  private static Reading parse(LineParser parser, String line) {
    byte[] bytes = line.getBytes(ISO_8859_1);
    return parser.parse(bytes, 0, bytes.length, 5, Instant.EPOCH);
  }

  @Test
  void whatIsPrintedIsWhatWasRead() {
    LineFormat format = FormatText.parse(HERON);
    assertEquals(HERON, FormatText.print(format));
    LineFormat standard = LineFormat.standard();
    assertEquals(standard, FormatText.parse(FormatText.print(standard)));
  }

  @Test
  void everyPartOfALineDoesItsWork() {
    LineParser parser = FormatText.parse(HERON).parser();
    Reading still = parse(parser, withXor("\u0002017 ok-   0,12345 gm "));
    assertNotNull(still, parser.why());
    assertEquals(-123_450_000, still.mass().nanograms());
    assertEquals("-0.12345", still.digits());
    assertEquals("g", still.unit());
    assertEquals(Reading.Mark.STABLE, still.mark());
    Reading moving = parse(parser, withXor("\u0002018 ok    0,1234 "));
    assertEquals(Reading.Mark.MOVING, moving.mark());
    assertEquals(Reading.Kind.OVER, parse(parser, withXor("\u0002019 HI 9,9999 gm")).kind());
    assertEquals(Reading.Kind.UNDER, parse(parser, "-- LOW --").kind());
    assertNull(parse(parser, "TIME 12:30"));
    assertNull(parser.why());
  }

  @Test
  void aLineWhoseCheckDigitsDisagreeIsDamagedAndNotRead() {
    LineParser parser = FormatText.parse(HERON).parser();
    String good = withXor("\u0002017 ok-   0,12345 gm ");
    assertNull(parse(parser, good.replace("0,12345", "0,12845")));
    assertTrue(parser.why().contains("damaged"), parser.why());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hello | line 1: the first line must be",
        "name: x y | line 2: a name has letters",
        "colour: red | line 2: unknown key \"colour\"",
        "point: ; | line 2: point must be",
        "decimals: ten | line 2: decimals must be a whole number",
        "decimals: 5-3 | decimals must be 0 to 9",
        "line: number unit mystery | line 2: unknown part \"mystery\"",
        "line: number unit 'x | line 2: the closing quote is missing",
        "line: sign | exactly one number",
        "line: number | without a unit in the line, supply one",
        "line: number digits unit | nothing parts the number from the digits",
        "line: word number unit | would swallow",
        "ends: RETURN | line 2: \"RETURN\" is no control character",
        "unit 'lb': pound | line 2: a unit is g, mg, kg",
        "mark 'S': good | line 2: it can mean nothing, stable, moving",
        "unit 'g' g | line 2: after the text comes a colon",
        "talks: always | line 2: talks must be",
        "supply: oz | line 2: a unit is",
        "no unit: over | moving, or nothing",
        "ask: 'P\\q' | line 2: no such escape",
        "length: 9999 | line 2: length must be a whole number of 0 to 512",
      })
  void aFileThatCannotBeReadSaysWhereAndWhy(String line, String expected) {
    String text =
        line.equals("hello") ? line : FormatText.FIRST_LINE + "\n" + line + withLine(line);
    Exception e = assertThrows(FormatException.class, () -> FormatText.parse(text));
    assertTrue(e.getMessage().contains(expected), e.getMessage());
  }

  private static String withLine(String line) {
    String parts = line.startsWith("line:") ? "" : "\nline: number gap unit";
    boolean own = line.startsWith("unit 'g'") || line.equals("line: number");
    return parts + (own ? "" : "\nunit 'g': g");
  }

  @Test
  void aKeyGivenTwiceIsRefused() {
    String text = FormatText.FIRST_LINE + "\npoint: .\npoint: ,\n";
    Exception e = assertThrows(FormatException.class, () -> FormatText.parse(text));
    assertTrue(e.getMessage().contains("line 3: the key point is there twice"), e.getMessage());
  }

  @Test
  void aDecimalMoreOrLessThanStatedIsALineThatLostSomething() {
    String text = FormatText.FIRST_LINE + "\nline: number gap unit\ndecimals: 5\nunit 'g': g\n";
    LineParser parser = FormatText.parse(text).parser();
    assertNotNull(parse(parser, "0.12345 g"));
    assertNull(parse(parser, "0.1235 g"));
    assertNull(parse(parser, "0.123345 g"));
  }
}
