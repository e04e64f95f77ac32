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

  @Property(tries = 10_000)
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

  @Property(tries = 10_000)
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
}
