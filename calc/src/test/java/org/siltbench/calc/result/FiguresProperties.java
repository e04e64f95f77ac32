package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The quick figures against the plain sentence of the rule in big decimals (java.math, JDK 17). */
final class FiguresProperties {

  private static String rule(double value, int digits, double limit) {
    BigDecimal exact = new BigDecimal(Double.toString(value));
    BigDecimal figures = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
    int places = Math.max(0, figures.scale());
    if (limit > 0) {
      places = Math.min(places, limitPlaces(limit));
    }
    boolean coarser = figures.scale() < 0;
    return (coarser ? figures : exact.setScale(places, RoundingMode.HALF_EVEN)).toPlainString();
  }

  private static int limitPlaces(double limit) {
    BigDecimal two =
        new BigDecimal(Double.toString(limit))
            .round(new MathContext(2, RoundingMode.HALF_EVEN))
            .stripTrailingZeros();
    return Math.max(0, two.scale());
  }

  /**
   * Numbers of every size and kind: long fractions, short decimals, halves, neighbours of halves.
   */
  @Provide
  Arbitrary<Double> numbers() {
    Arbitrary<Double> any =
        Arbitraries.doubles().between(-1e13, 1e13).ofScale(15).filter(x -> !x.equals(-0.0));
    Arbitrary<Double> small = Arbitraries.doubles().between(-200, 200).ofScale(17);
    Arbitrary<Double> byPower =
        Arbitraries.doubles()
            .between(1, 10)
            .ofScale(16)
            .flatMap(m -> Arbitraries.integers().between(-12, 14).map(e -> m * Math.pow(10, e)));
    Arbitrary<Double> shorts =
        Arbitraries.longs()
            .between(-99_999, 99_999)
            .flatMap(n -> Arbitraries.integers().between(-4, 8).map(e -> decimal(n, e)));
    Arbitrary<Double> halves =
        Arbitraries.longs()
            .between(-9_999, 9_999)
            .flatMap(n -> Arbitraries.integers().between(0, 8).map(e -> decimal(10 * n + 5, e)));
    Arbitrary<Double> nearHalves = halves.map(Math::nextUp);
    Arbitrary<Double> underHalves = halves.map(Math::nextDown);
    return Arbitraries.oneOf(any, small, byPower, shorts, halves, nearHalves, underHalves);
  }

  private static double decimal(long unscaled, int scale) {
    return BigDecimal.valueOf(unscaled, scale).doubleValue();
  }

  @Property(tries = 4_000)
  void the_quick_way_says_what_the_rule_says(
      @ForAll("numbers") double value,
      @ForAll @IntRange(min = 1, max = 10) int digits,
      @ForAll("numbers") double limit) {
    assertEquals(rule(value, digits, limit), ForPeople.value(value, digits, limit));
    assertEquals(rule(value, digits, 0), ForPeople.value(value, digits, 0));
  }

  @Property(tries = 1_000)
  void the_long_way_says_it_too(
      @ForAll("numbers") double value, @ForAll @IntRange(min = 1, max = 10) int digits) {
    assertEquals(rule(value, digits, 0), Figures.slow(value, digits, Figures.ANY_PLACES));
  }

  @Property(tries = 1_000)
  void the_places_of_a_limit_are_those_of_its_two_figures(@ForAll("numbers") double limit) {
    double size = Math.abs(limit);
    assertEquals(size == 0 ? 0 : limitPlaces(size), size == 0 ? 0 : Figures.places(size));
  }

  /** By hand, half to even (Standard Methods 1050 B; memory). */
  @Test
  void rounding_by_hand() {
    assertEquals("0.12", ForPeople.value(0.125, 2, 0));
    assertEquals("0.14", ForPeople.value(0.135, 2, 0));
    assertEquals("10.0", ForPeople.value(9.996, 3, 0));
    assertEquals("1.0", ForPeople.value(0.96, 2, 0.3));
    assertEquals("-0.5", ForPeople.value(-0.45001, 3, 0.5));
    assertEquals("0.0", ForPeople.value(-0.04, 3, 0.5));
    assertEquals("12300", ForPeople.value(12345, 3, 0));
    assertEquals("0.00000012", ForPeople.value(1.23e-7, 2, 0));
    assertEquals("33", ForPeople.value(33.14, 3, 5));
  }

  @Test
  void the_power_of_the_first_figure() {
    assertEquals(0, Figures.exponent(1));
    assertEquals(0, Figures.exponent(9.999));
    assertEquals(1, Figures.exponent(10));
    assertEquals(-1, Figures.exponent(0.1));
    assertEquals(-2, Figures.exponent(0.0999));
    assertEquals(11, Figures.exponent(999_999_999_999.0));
    assertEquals(-9, Figures.exponent(1e-9));
  }

  @Test
  void what_lies_near_a_half_is_left_to_the_long_way() {
    assertEquals(-1, Figures.rounded(0.125, 2));
    assertEquals(-1, Figures.rounded(12.5000001, 0));
    assertEquals(13, Figures.rounded(12.51, 0));
    assertEquals(12, Figures.rounded(12.49, 0));
    assertEquals(1, Figures.rounded(1234, -3));
    assertEquals(-1, Figures.rounded(1e10, 0));
  }
}
