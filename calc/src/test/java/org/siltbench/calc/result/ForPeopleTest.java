package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ForPeopleTest {

  @ParameterizedTest
  @CsvSource({
    "33.14, 3, 2.5, 33.1",
    "33.14, 3, 4, 33",
    "33.14, 3, 5.0, 33",
    "33.14, 3, 0, 33.1",
    "33.14, 3, NaN, 33.1",
    "33.14, 2, 0.001, 33",
    "1234.5, 3, 2.5, 1230",
    "99.96, 3, 2.5, 100",
    "0.04, 3, 0.5, 0.0",
    "0.06, 3, 0.5, 0.1",
    "-0.4, 3, 5, 0",
    "-3.14, 3, 0.5, -3.1",
    "20, 3, 2.5, 20.0",
    "2.5, 1, 0, 2",
    "3.5, 1, 0, 4",
    "12.5, 3, 13.37, 12",
    "150, 3, 100, 150",
    "0.0012345, 3, 0, 0.00123",
    "0, 3, 2.5, 0.0",
    "12345678, 3, 0, 12300000"
  })
  void at_most_so_many_figures_and_never_beyond_the_place_of_the_limit(
      double value, int digits, double limit, String shown) {
    String text = ForPeople.value(value, digits, limit);
    assertEquals(shown, text.equals("-0") ? "0" : text);
  }

  @Test
  void what_is_no_number_is_shown_as_such() {
    assertEquals("", ForPeople.value(Double.NaN, 3, 1));
    assertEquals("∞", ForPeople.value(Double.POSITIVE_INFINITY, 3, 1));
    assertEquals("-∞", ForPeople.value(Double.NEGATIVE_INFINITY, 3, 1));
    assertEquals("", ForPeople.uncertainty(Double.NaN));
    assertEquals("0.35", ForPeople.uncertainty(0.3457));
    assertEquals("13", ForPeople.uncertainty(13.4));
  }

  @Test
  void below_the_limit_the_limit_stands_first_and_the_value_is_kept() {
    assertEquals("33.1", ForPeople.result(33.14, 3, 2.5));
    assertEquals("2.5", ForPeople.result(2.5, 3, 2.5));
    assertEquals("< 2.5 (1.2)", ForPeople.result(1.24, 3, 2.5));
    assertEquals("< 13 (3)", ForPeople.result(3.4, 3, 13.37));
    assertEquals("< 5 (-1)", ForPeople.result(-1.2, 3, 5));
    assertEquals("33.1", ForPeople.result(33.14, 3, Double.NaN));
    assertEquals("", ForPeople.limit(Double.NaN));
    assertEquals("", ForPeople.limit(0));
    assertEquals("120", ForPeople.limit(123));
    assertEquals("0.05", ForPeople.limit(0.05));
  }

  @Property
  void no_figure_is_moved_by_more_than_half_its_last_place(
      @ForAll @DoubleRange(min = -9999, max = 9999) double value,
      @ForAll @DoubleRange(min = 0.01, max = 99) double limit) {
    String text = ForPeople.value(value, 3, limit);
    BigDecimal shown = new BigDecimal(text);
    BigDecimal moved = shown.subtract(new BigDecimal(Double.toString(value))).abs();
    BigDecimal figures =
        new BigDecimal(Double.toString(value))
            .round(new java.math.MathContext(3, RoundingMode.HALF_EVEN));
    int place = Math.min(shown.scale(), figures.scale());
    assertTrue(moved.compareTo(new BigDecimal("0.5").movePointLeft(place)) <= 0, text);
    assertTrue(shown.signum() == 0 || shown.stripTrailingZeros().precision() <= 3, text);
  }
}
