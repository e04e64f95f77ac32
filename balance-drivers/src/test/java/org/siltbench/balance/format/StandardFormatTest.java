package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.siltbench.balance.Reading;

class StandardFormatTest {

  private final LineParser parser = LineFormat.standard().parser();

  private Reading parse(LineParser with, String line) {
    byte[] bytes = line.getBytes(ISO_8859_1);
    return with.parse(bytes, 0, bytes.length, 5, Instant.EPOCH);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "0.12345 g|123450000|0.12345",
        "+   0.12345 g|123450000|0.12345",
        "-   0.00012 g|-120000|-0.00012",
        "   - 12.34 mg  |-12340000|-12.34",
        "00012.34mg|12340000|12.34",
        "0,1234 g|123400000|0.1234",
        "0,123 g|123000000|0.123",
        "12 g|12000000000|12",
        "1.5 kg|1500000000000|1.5",
        "35.001 ug|35001|35.001",
      })
  void oneNumberWithAUnitIsRead(String line, long nanograms, String digits) {
    Reading reading = parse(parser, line);
    assertNotNull(reading, parser.why());
    assertEquals(nanograms, reading.mass().nanograms());
    assertEquals(digits, reading.digits());
    assertEquals(line, reading.raw());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "0.12345|the unit is missing",
        "|no number",
        "ST 0.12345 g|no number",
        "0.12345 g *|more than the format knows",
        "0.12345 lb|no unit the format knows",
        "1,234 g|no number",
        "1.234.5 g|no number",
        "1.234,5 g|no number",
        ".5 g|no number",
        "5. g|no number",
        "0.12345 g 0.12346 g|more than the format knows",
        "- - 0.1 g|no number",
        "0.12345 gg|more than the format knows",
        "0.1234567899 g|no number",
        "99999999 kg|beyond 9200 t",
        "123456789012345678901 g|no number",
      })
  void anythingElseIsRefusedWithAReason(String line, String why) {
    assertNull(parse(parser, line == null ? "" : line));
    assertTrue(String.valueOf(parser.why()).contains(why), parser.why());
  }

  /**
   * The most nanograms in 64 bits are 9223372036854775807: 9223 tonnes and a little. A number has
   * 18 digits at most, so that the last of those is not reached.
   */
  @ParameterizedTest
  @CsvSource({
    "9223372036.85477580 g,9223372036854775800",
    "-9223372036.85477580 g,-9223372036854775800",
    "9223372.036854 kg,9223372036854000000",
    "9200000 kg,9200000000000000000",
  })
  void theLargestMassesAreTaken(String line, long nanograms) {
    Reading reading = parse(parser, line);
    assertNotNull(reading, parser.why());
    assertEquals(nanograms, reading.mass().nanograms());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "9223372036.85477581 g",
        "-9223372036.85477581 g",
        "9223372.036855 kg",
        "-9223372.036855 kg",
        "9223373 kg"
      })
  void oneStepBeyondIsRefused(String line) {
    assertNull(parse(parser, line));
    assertTrue(String.valueOf(parser.why()).contains("beyond 9200 t"), parser.why());
  }

  @Test
  void aUnitThatChangesUnderWayIsRefusedAndNotConverted() {
    assertNotNull(parse(parser, "0.12345 g"));
    assertNull(parse(parser, "123.45 mg"));
    assertTrue(parser.why().contains("the unit changed from g to mg"));
    assertNotNull(parse(parser, "0.12346 g"));
  }

  @Test
  void anExpectedUnitIsSuppliedWhereItIsMissingAndNoOtherIsTaken() {
    LineParser grams = LineFormat.standard().expecting(MassUnit.GRAM).parser();
    assertEquals(123_450_000, parse(grams, "+ 0.12345").mass().nanograms());
    assertEquals(123_450_000, parse(grams, "+ 0.12345 g").mass().nanograms());
    assertNull(parse(grams, "123.45 mg"));
  }
}
