package org.siltbench.calc.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class QuantityTest {

  @ParameterizedTest
  @CsvSource({
    "0.12874, 128740000",
    "-0.00012, -120000",
    "+1, 1000000000",
    "0, 0",
    ".5, 500000000",
    "1., 1000000000",
    "0.000000001, 1",
    "9223372036.854775807, 9223372036854775807"
  })
  void grams_are_read_exactly(String text, long nanograms) {
    assertEquals(nanograms, Mass.ofGrams(text).nanograms());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-",
        ".",
        "1e3",
        "1,5",
        " 1",
        "1 g",
        "0.0000000001",
        "9223372036.854775808",
        "1.2.3",
        "--1",
        "1-",
        "٣",
        "NaN",
        "11111111111111111111111111111111111111111"
      })
  void what_is_no_exact_mass_is_refused(String text) {
    assertThrows(NumberFormatException.class, () -> Mass.ofGrams(text));
    if (!text.equals("0.0000000001") && !text.startsWith("9")) {
      assertThrows(NumberFormatException.class, () -> Mass.ofMilligrams(text));
    }
  }

  @Test
  void a_refusal_names_the_text_and_cuts_an_endless_one() {
    NumberFormatException e =
        assertThrows(NumberFormatException.class, () -> Mass.ofGrams("x".repeat(1000)));
    assertTrue(e.getMessage().length() < 100, e.getMessage());
    assertTrue(e.getMessage().contains("…"));
    NumberFormatException fine =
        assertThrows(NumberFormatException.class, () -> Mass.ofGrams("0.0000000001"));
    assertTrue(fine.getMessage().contains("0.0000000001"), fine.getMessage());
    assertFalse(fine.getMessage().contains("…"));
    assertEquals(40, "1".repeat(40).length());
    assertThrows(NumberFormatException.class, () -> Mass.ofGrams("0." + "0".repeat(39)));
    assertEquals(Mass.ZERO, Mass.ofGrams("0." + "0".repeat(38)));
  }

  @Test
  void milligrams_and_back() {
    assertEquals(Mass.ofGrams("0.12874"), Mass.ofMilligrams("128.74"));
    assertEquals(Mass.ofMilligrams("0.5"), Mass.ofMilligrams(0.5));
    assertEquals(128.74, Mass.ofMilligrams("128.74").milligrams());
    assertEquals(0.12874, Mass.ofMilligrams("128.74").grams());
    assertEquals(new Mass(1), Mass.ofMilligrams(0.0000006));
    assertEquals("128.74", Mass.ofGrams("0.12874").toMilligrams());
    assertEquals("120", Mass.ofGrams("0.12").toMilligrams());
    assertEquals("0", Mass.ZERO.toMilligrams());
    for (double wrong : new double[] {Double.NaN, 9.3e12, -9.3e12, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> Mass.ofMilligrams(wrong));
    }
    assertThrows(IllegalArgumentException.class, () -> Mass.ofMilligrams(9.2e12));
  }

  @Test
  void arithmetic_is_exact_and_never_wraps_round() {
    Mass a = new Mass(5);
    Mass b = new Mass(7);
    Mass most = new Mass(Long.MAX_VALUE);
    Mass least = new Mass(Long.MIN_VALUE);
    assertEquals(new Mass(12), a.plus(b));
    assertEquals(new Mass(-2), a.minus(b));
    assertEquals(new Mass(2), a.minus(b).abs());
    assertEquals(new Mass(-5), a.negate());
    assertTrue(a.minus(b).isNegative());
    assertFalse(a.isNegative() || Mass.ZERO.isNegative());
    assertTrue(a.compareTo(b) < 0);
    assertThrows(ArithmeticException.class, () -> most.plus(a));
    assertThrows(ArithmeticException.class, () -> least.minus(a));
    assertThrows(ArithmeticException.class, least::negate);
    assertThrows(ArithmeticException.class, least::abs);
  }

  @Test
  void a_mass_is_written_with_so_many_places_or_as_short_as_it_is() {
    Mass mass = Mass.ofGrams("0.1280");
    assertEquals("0.12800", mass.toGrams(5));
    assertEquals("0.128", mass.toGrams());
    assertEquals("0.128 g", mass.toString());
    assertEquals("120", Mass.ofGrams("120").toGrams());
    assertThrows(ArithmeticException.class, () -> mass.toGrams(2));
  }

  @Property
  void every_mass_reads_back_from_its_text(@ForAll long nanograms) {
    Mass mass = new Mass(nanograms);
    assertEquals(mass, Mass.ofGrams(mass.toGrams()));
    assertEquals(mass, Mass.ofMilligrams(mass.toMilligrams()));
    assertEquals(mass, Mass.ofGrams(mass.toGrams(9)));
    assertEquals(
        0,
        new BigDecimal(mass.toGrams()).movePointRight(9).compareTo(BigDecimal.valueOf(nanograms)));
  }

  @Property
  void volumes_add_and_subtract_exactly(
      @ForAll @LongRange(max = 1L << 60) long a, @ForAll @LongRange(max = 1L << 60) long b) {
    Volume sum = new Volume(a).plus(new Volume(b));
    assertEquals(new Volume(a), sum.minus(new Volume(b)));
    assertEquals(sum, Volume.ofMillilitres(sum.toMillilitres()));
  }

  @Test
  void volumes_are_read_in_millilitres() {
    assertEquals(new Volume(187_500_000), Volume.ofMillilitres("187.5"));
    assertEquals(0.1875, Volume.ofMillilitres("187.5").litres());
    assertEquals(187.5, Volume.ofMillilitres("187.5").millilitres());
    assertEquals("187.5 mL", Volume.ofMillilitres("187.5").toString());
    assertEquals("200", Volume.ofMillilitres("200").toMillilitres());
    assertEquals(Volume.ofMillilitres("187.5"), Volume.ofMillilitres(187.5));
    assertTrue(Volume.ofMillilitres("1").isPositive());
    assertFalse(Volume.ZERO.isPositive() || Volume.ofMillilitres("-1").isPositive());
    assertTrue(Volume.ZERO.compareTo(new Volume(1)) < 0);
    for (String wrong :
        List.of("", "500 L", "1e3", "1E3", "1,5", "0.0000001", "9".repeat(41), "99999999999999")) {
      NumberFormatException e =
          assertThrows(NumberFormatException.class, () -> Volume.ofMillilitres(wrong), wrong);
      assertTrue(e.getMessage().contains("millilitres"));
    }
    Volume most = new Volume(Long.MAX_VALUE);
    Volume least = new Volume(Long.MIN_VALUE);
    Volume one = new Volume(1);
    assertThrows(ArithmeticException.class, () -> most.plus(one));
    assertThrows(ArithmeticException.class, () -> least.minus(one));
    assertThrows(IllegalArgumentException.class, () -> Volume.ofMillilitres(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Volume.ofMillilitres(9.3e12));
  }
}
