package org.siltbench.calc.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

final class ControlTest {

  private static final double[] FLOW = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};

  /** NIST/SEMATECH e-Handbook 6.3.2.2 (check values A7). */
  @Test
  void individualsChartOfTheHandbook() {
    IndividualsChart c = IndividualsChart.of(FLOW);
    assertEquals(10, c.n());
    assertEquals(50.81, c.centre(), 1e-3);
    assertEquals(1.8778, c.meanMovingRange(), 1e-3);
    assertEquals(55.8041, c.upper(), 1e-3);
    assertEquals(45.8159, c.lower(), 1e-3);
    assertEquals(6.1347, c.upperMovingRange(), 1e-3);
  }

  /** d2 and D4 for two (check values A7), and by their definition 2/√π, 1 + 3√(2 − 4/π)/d2. */
  @Test
  void factorsForRangesOfTwo() {
    double d2 = 2 / Math.sqrt(Math.PI);
    assertEquals(1.128379, d2, 5e-7);
    assertEquals(d2, IndividualsChart.D2, 5e-4);
    assertEquals(1 + 3 * Math.sqrt(2 - 4 / Math.PI) / d2, IndividualsChart.D4, 5e-4);
  }

  @Test
  void jumpsAreStepsBeyondTheRangeLimit() {
    IndividualsChart c = new IndividualsChart(20, 10, 1);
    assertEquals(List.of(2, 3), c.jumps(10, 10.5, 14, 10, 13.267));
    assertEquals(List.of(), c.jumps(10));
    assertEquals(List.of(), c.jumps());
  }

  @Test
  void hostileSeries() {
    IndividualsChart flat = IndividualsChart.of(1, 1, 1);
    assertEquals(1, flat.upper());
    assertEquals(1, flat.lower());
    assertThrows(IllegalArgumentException.class, () -> IndividualsChart.of(1));
    assertThrows(IllegalArgumentException.class, () -> IndividualsChart.of(1, Double.NaN));
  }

  private static List<Integer> places(RunRule rule, double... x) {
    return RunRules.signals(x, 0, 1, Set.of(rule)).stream().map(RunRules.Signal::place).toList();
  }

  /** Western Electric handbook (1956), rules from memory (check values A7). */
  @Test
  void oneBeyondThreeSigma() {
    assertEquals(List.of(1, 3), places(RunRule.ONE_BEYOND_THREE_SIGMA, 3, 3.1, -3, -3.01));
  }

  @Test
  void twoOfThreeBeyondTwoSigmaOnTheSameSide() {
    RunRule rule = RunRule.TWO_OF_THREE_BEYOND_TWO_SIGMA;
    assertEquals(List.of(2), places(rule, 2.1, 0, 2.1, 0));
    assertEquals(List.of(), places(rule, 2.1, 0, 0, 2.1));
    assertEquals(List.of(), places(rule, 2.1, -2.1, 0));
    assertEquals(List.of(1, 2), places(rule, -2.1, -2.1, -2.1));
    assertEquals(List.of(), places(rule, 2, 2, 2));
  }

  @Test
  void fourOfFiveBeyondOneSigmaOnTheSameSide() {
    RunRule rule = RunRule.FOUR_OF_FIVE_BEYOND_ONE_SIGMA;
    assertEquals(List.of(4), places(rule, 1.1, 1.1, 0, 1.1, 1.1));
    assertEquals(List.of(), places(rule, 1.1, 1.1, 0, 0, 1.1, 1.1));
    assertEquals(List.of(), places(rule, 1.1, 1.1, -1.1, 1.1, 0));
    assertEquals(List.of(3), places(rule, -1.1, -1.1, -1.1, -1.1));
  }

  @Test
  void eightInARowOnOneSide() {
    RunRule rule = RunRule.EIGHT_ON_ONE_SIDE;
    double[] eight = {.1, .1, .1, .1, .1, .1, .1, .1};
    assertEquals(List.of(7), places(rule, eight));
    eight[3] = 0; // on the line is on neither side
    assertEquals(List.of(), places(rule, eight));
    assertEquals(List.of(), places(rule, .1, .1, .1, .1, .1, .1, .1));
    assertEquals(List.of(8), places(rule, .1, -1, -1, -1, -1, -1, -1, -1, -1));
  }

  @Test
  void allRulesAreReportedInOrder() {
    List<RunRules.Signal> all =
        RunRules.signals(new double[] {0, 3.5, 2.5}, 0, 1, EnumSet.allOf(RunRule.class));
    assertEquals(
        List.of(
            new RunRules.Signal(1, RunRule.ONE_BEYOND_THREE_SIGMA),
            new RunRules.Signal(2, RunRule.TWO_OF_THREE_BEYOND_TWO_SIGMA)),
        all);
    assertTrue(RunRules.signals(new double[0], 0, 1, Set.of()).isEmpty());
    assertEquals(
        1,
        RunRules.signals(new double[] {1, 1.0001}, 1, 0, Set.of(RunRule.ONE_BEYOND_THREE_SIGMA))
            .size());
    assertThrows(
        IllegalArgumentException.class, () -> RunRules.signals(new double[] {1}, 0, -1, Set.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> RunRules.signals(new double[] {1}, Double.NaN, 1, Set.of()));
  }

  @Property(tries = 100)
  void rulesDoNotDependOnUnitOrSign(
      @ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = -4, max = 4) Double> drawn) {
    double[] x = drawn.stream().mapToDouble(Double::doubleValue).toArray();
    Set<RunRule> rules = EnumSet.allOf(RunRule.class);
    double[] turned = Arrays.stream(x).map(v -> -v * 1024).toArray(); // exact in binary
    assertEquals(RunRules.signals(x, 0, 1, rules), RunRules.signals(turned, 0, 1024, rules));
  }

  /** NIST/SEMATECH e-Handbook 6.3.2.4, its worked example, from memory; recomputed and agrees. */
  @Test
  void movingAverageOfTheHandbook() {
    double[] data = {
      52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8,
      51.2, 52.6, 52.4, 53.6, 52.1
    };
    double[] printed = {
      50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52,
      50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99
    };
    Ewma chart = new Ewma(50, 2.0539, 0.3, 3);
    List<Ewma.Point> points = chart.points(data);
    for (int i = 0; i < data.length; i++) {
      assertEquals(printed[i], points.get(i).average(), 0.0051);
      assertFalse(points.get(i).out());
    }
    assertEquals(52.5884, 50 + chart.finalHalfWidth(), 5e-5);
    assertEquals(47.4115, 50 - chart.finalHalfWidth(), 1.5e-4);
    assertEquals(50 + chart.finalHalfWidth(), points.get(19).upper(), 1e-4);
    assertEquals(50 - chart.finalHalfWidth(), points.get(19).lower(), 1e-4);
  }

  /** The variance of the first average is λ²σ² exactly. */
  @Test
  void earlyLimitsAreNarrower() {
    Ewma.Point first = new Ewma(10, 2, 0.25, 3).points(10).get(0);
    assertEquals(10 + 3 * 0.25 * 2, first.upper(), 1e-12);
    assertEquals(10 - 3 * 0.25 * 2, first.lower(), 1e-12);
    assertEquals(10, first.average(), 1e-15);
    Ewma.Point second = new Ewma(10, 2, 0.25, 3).points(10, 14).get(1);
    double u2 = 0.25 * 0.25 * (1 + 0.75 * 0.75) * 4;
    assertEquals(10 + 3 * Math.sqrt(u2), second.upper(), 1e-12);
    assertEquals(11, second.average(), 1e-12);
  }

  @Test
  void averageOutsideOnEitherSideIsOut() {
    assertTrue(new Ewma.Point(5.1, 4, 5).out());
    assertTrue(new Ewma.Point(3.9, 4, 5).out());
    assertFalse(new Ewma.Point(5, 4, 5).out());
    assertFalse(new Ewma.Point(4, 4, 5).out());
  }

  @Test
  void lambdaOfOneIsThePlainChart() {
    Ewma.Point p = new Ewma(0, 1, 1, 3).points(2.5).get(0);
    assertEquals(new Ewma.Point(2.5, -3, 3), p);
    assertThrows(IllegalArgumentException.class, () -> new Ewma(0, 1, 0, 3));
    assertThrows(IllegalArgumentException.class, () -> new Ewma(0, 1, 1.1, 3));
    assertThrows(IllegalArgumentException.class, () -> new Ewma(0, 0, 0.2, 3));
    assertThrows(IllegalArgumentException.class, () -> new Ewma(0, 1, 0.2, 0));
    assertThrows(IllegalArgumentException.class, () -> new Ewma(Double.NaN, 1, 0.2, 3));
  }

  /** NIST/SEMATECH e-Handbook 6.3.2.3, data from memory, sums recomputed. */
  @Test
  void cumulativeSumOfTheHandbook() {
    double[] data = {
      324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225, 324.600,
      324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775, 326.875, 328.350
    };
    List<Cusum.Point> points = new Cusum(325, 0.3175, 4.1959).points(data);
    double[] high = {
      0, 0, 0, 0, .0325, 0, 0, 0, 0, 0, 0, 0, 3.0075, 4.94, 7.4475, 10.63, 11.9875, 14.445, 16.0025,
      19.035
    };
    double[] low = {
      0, .0075, 0, .3325, 0, 0, .5575, .715, .1725, .255, .3125, 0, 0, 0, 0, 0, 0, 0, 0, 0
    };
    for (int i = 0; i < data.length; i++) {
      assertEquals(high[i], points.get(i).high(), 1e-9);
      assertEquals(low[i], points.get(i).low(), 1e-9);
      assertEquals(i >= 13, points.get(i).out());
    }
  }

  @Test
  void cumulativeSumSignalsBelowToo() {
    List<Cusum.Point> points = new Cusum(0, 0.5, 4).points(-2.5, -2.5, -0.6);
    assertEquals(new Cusum.Point(0, 2, false), points.get(0));
    assertFalse(points.get(1).out()); // exactly on the decision value
    assertTrue(points.get(2).out());
    assertThrows(IllegalArgumentException.class, () -> new Cusum(0, -1, 4));
    assertThrows(IllegalArgumentException.class, () -> new Cusum(0, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> new Cusum(Double.NaN, 1, 4));
  }

  /** The rules count from the centre, wherever it lies; a shift of all values changes nothing. */
  @Property(tries = 100)
  void rulesCountFromTheCentre(
      @ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = -4, max = 4) Double> drawn) {
    double[] x = drawn.stream().mapToDouble(v -> Math.rint(v * 64) / 64).toArray();
    double[] shifted = Arrays.stream(x).map(v -> v + 100).toArray();
    Set<RunRule> rules = EnumSet.allOf(RunRule.class);
    assertEquals(RunRules.signals(x, 0, 1, rules), RunRules.signals(shifted, 100, 1, rules));
  }
}
