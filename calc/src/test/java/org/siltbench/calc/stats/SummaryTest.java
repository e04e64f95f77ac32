package org.siltbench.calc.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

final class SummaryTest {

  /** NIST StRD univariate, certified values (check values A7). */
  private static double[] accuracy(double first, double a, double b, int pairs) {
    double[] x = new double[1 + 2 * pairs];
    x[0] = first;
    for (int i = 0; i < pairs; i++) {
      x[1 + 2 * i] = a;
      x[2 + 2 * i] = b;
    }
    return x;
  }

  @Test
  void numericalAccuracyOneOfNistStrd() {
    Summary s = Summary.of(10000001, 10000003, 10000002);
    assertEquals(10000002, s.mean());
    assertEquals(1, s.deviation());
  }

  @Test
  void numericalAccuracyTwoOfNistStrd() {
    Summary s = Summary.of(accuracy(1.2, 1.1, 1.3, 500));
    assertEquals(1.2, s.mean(), 1e-15);
    assertEquals(0.1, s.deviation(), 1e-15);
  }

  @Test
  void numericalAccuracyThreeOfNistStrd() {
    Summary s = Summary.of(accuracy(1000000.2, 1000000.1, 1000000.3, 500));
    assertEquals(1000000.2, s.mean(), 1e-9);
    assertEquals(0.1, s.deviation(), 1e-10); // the data themselves are rounded to 1e-10
  }

  /** NumAcc4 of NIST StRD, from memory: mean 10000000.2, sd 0.1. */
  @Test
  void numericalAccuracyFourOfNistStrd() {
    Summary s = Summary.of(accuracy(10000000.2, 10000000.1, 10000000.3, 500));
    assertEquals(10000000.2, s.mean(), 2e-9);
    assertEquals(0.1, s.deviation(), 1e-8);
  }

  /** GUM (JCGM 100:2008) 4.4.3, data from memory. */
  @Test
  void temperaturesOfTheGum() {
    Summary s =
        Summary.of(
            96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42,
            100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72);
    assertEquals(20, s.n());
    assertEquals(19, s.degreesOfFreedom());
    assertEquals(100.145, s.mean(), 5e-4);
    assertEquals(1.4888, s.deviation(), 5e-5);
    assertEquals(0.3329, s.deviationOfMean(), 5e-5);
    assertEquals(1.4888 / 100.145, s.relativeDeviation(), 1e-6);
  }

  @Test
  void relativeDeviationHasNoSignAndIsInfiniteAtZero() {
    assertEquals(Summary.of(1, 3).relativeDeviation(), Summary.of(-1, -3).relativeDeviation());
    assertEquals(Double.POSITIVE_INFINITY, Summary.of(-1, 1).relativeDeviation());
  }

  @Test
  void oneValueHasAMeanAndNoDeviation() {
    Summary s = Summary.of(4.2);
    assertEquals(4.2, s.mean());
    assertTrue(Double.isNaN(s.deviation()));
    assertTrue(Double.isNaN(s.deviationOfMean()));
  }

  @Test
  void allEqualGivesADeviationOfExactlyZero() {
    assertEquals(0.0, Summary.of(0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1).deviation());
  }

  @Test
  void noneNanAndInfiniteAreRefused() {
    assertThrows(IllegalArgumentException.class, Summary::of);
    assertThrows(IllegalArgumentException.class, () -> Summary.of(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Summary.of(Double.POSITIVE_INFINITY));
  }

  @Property(tries = 200)
  void agreesWithCommonsMathAndDoesNotDependOnOrder(
      @ForAll @Size(min = 2, max = 40) List<@DoubleRange(min = -1e3, max = 1e3) Double> drawn) {
    double[] values = drawn.stream().mapToDouble(Double::doubleValue).toArray();
    DescriptiveStatistics reference = new DescriptiveStatistics(values);
    Summary s = Summary.of(values);
    assertEquals(reference.getMean(), s.mean(), 1e-10);
    assertEquals(reference.getStandardDeviation(), s.deviation(), 1e-9);
    double[] reversed = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      reversed[i] = values[values.length - 1 - i];
    }
    assertEquals(s.deviation(), Summary.of(reversed).deviation(), 1e-10);
  }

  @Property(tries = 100)
  void scalesWithTheUnit(
      @ForAll @Size(min = 2, max = 20) List<@DoubleRange(min = -1e3, max = 1e3) Double> drawn) {
    double[] values = drawn.stream().mapToDouble(Double::doubleValue).toArray();
    double[] scaled = values.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= 1000;
    }
    Summary milli = Summary.of(scaled);
    Summary unit = Summary.of(values);
    assertEquals(unit.mean() * 1000, milli.mean(), 1e-7);
    assertEquals(unit.deviation() * 1000, milli.deviation(), 1e-7);
  }
}
