package org.siltbench.calc.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Exact decimals against java.math.BigDecimal (JDK 17). */
final class FixedPointProperties {

  @Provide
  Arbitrary<String> decimals() {
    Arbitrary<String> digits = Arbitraries.strings().numeric().ofMinLength(0).ofMaxLength(14);
    Arbitrary<String> sign = Arbitraries.of("", "-", "+");
    Arbitrary<String> point = Arbitraries.of("", ".");
    return net.jqwik.api.Combinators.combine(sign, digits, point, digits)
        .as((s, a, p, b) -> s + a + p + b);
  }

  @Property(tries = 2_000)
  void reading_is_what_big_decimals_read(
      @ForAll("decimals") String text, @ForAll @IntRange(min = 1, max = 9) int scale) {
    BigDecimal exact;
    try {
      exact = new BigDecimal(text);
    } catch (NumberFormatException e) {
      assertThrows(NumberFormatException.class, () -> FixedPoint.parse(text, scale), text);
      return;
    }
    try {
      long expected = exact.movePointRight(scale).longValueExact();
      assertEquals(expected, FixedPoint.parse(text, scale), text);
    } catch (ArithmeticException e) {
      assertThrows(ArithmeticException.class, () -> FixedPoint.parse(text, scale), text);
    }
  }

  @Property(tries = 2_000)
  void writing_is_what_big_decimals_write(
      @ForAll long value, @ForAll @IntRange(min = 1, max = 18) int scale) {
    for (long each : new long[] {value, value % 1_000_000, value / 1000 * 1000}) {
      assertEquals(
          BigDecimal.valueOf(each, scale).stripTrailingZeros().toPlainString().equals("0")
              ? "0"
              : BigDecimal.valueOf(each, scale).stripTrailingZeros().toPlainString(),
          FixedPoint.plain(each, scale));
    }
  }

  @Test
  void the_ends_of_the_range() {
    assertEquals("-9223372036.854775808", FixedPoint.plain(Long.MIN_VALUE, 9));
    assertEquals("9223372036.854775807", FixedPoint.plain(Long.MAX_VALUE, 9));
    assertEquals("0", FixedPoint.plain(0, 6));
    assertEquals("-0.000001", FixedPoint.plain(-1, 6));
    assertEquals(Long.MAX_VALUE, FixedPoint.parse("9223372036.854775807", 9));
    assertEquals(Long.MIN_VALUE, FixedPoint.parse("-9223372036.854775808", 9));
    assertEquals(1_000_000_000L, FixedPoint.parse("1.0000000000000", 9));
    assertThrows(ArithmeticException.class, () -> FixedPoint.parse("9223372036.854775808", 9));
    assertThrows(ArithmeticException.class, () -> FixedPoint.parse("0.0000000001", 9));
    for (String no : new String[] {"", "-", ".", "1..2", "1-", "a", "--1"}) {
      assertThrows(NumberFormatException.class, () -> FixedPoint.parse(no, 9), no);
    }
  }

  @Test
  void forty_characters_are_read_and_no_more() {
    String forty = "0".repeat(38) + ".5";
    assertEquals(500_000_000L, FixedPoint.parse(forty, 9));
    assertThrows(NumberFormatException.class, () -> FixedPoint.parse("0" + forty, 9));
    NumberFormatException no =
        assertThrows(NumberFormatException.class, () -> Mass.ofGrams("0" + forty));
    assertEquals(
        "not a decimal number of g: \"" + ("0" + forty).substring(0, 40) + "…\"", no.getMessage());
    assertEquals(
        "not a volume in millilitres: \"1e3\"",
        assertThrows(NumberFormatException.class, () -> Volume.ofMillilitres("1e3")).getMessage());
    assertEquals(
        "finer than a billionth or out of range, not a decimal number of g: \"0.0000000001\"",
        assertThrows(NumberFormatException.class, () -> Mass.ofGrams("0.0000000001")).getMessage());
  }

  @Test
  void digits_of_other_scripts_and_exponents_are_no_plain_numbers() {
    for (String no : new String[] {"\u0661", "1E2", "1e2", "1_0", "0x1", " 1", "1 "}) {
      assertThrows(NumberFormatException.class, () -> FixedPoint.parse(no, 6), no);
    }
  }

  @Test
  void computed_quantities_are_rounded_and_kept_within_their_range() {
    assertEquals(new Volume(1_500_001), Volume.ofMillilitres(1.5000005001));
    assertEquals(new Mass(-2), Mass.ofMilligrams(-0.0000016));
    for (double no : new double[] {9.2e12, -9.2e12, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> Volume.ofMillilitres(no));
      assertThrows(IllegalArgumentException.class, () -> Mass.ofMilligrams(no));
    }
    double last = Math.nextDown(9.2e12);
    assertEquals(Math.round(last * 1e6), Volume.ofMillilitres(last).nanolitres());
    assertEquals(Math.round(-last * 1e6), Mass.ofMilligrams(-last).nanograms());
    assertEquals(false, Volume.ZERO.isPositive());
    assertEquals(true, new Volume(1).isPositive());
    assertEquals(false, Mass.ZERO.isNegative());
    assertEquals(true, new Mass(-1).isNegative());
  }
}
