package org.siltbench.calc.montecarlo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.calc.stats.Quantiles;

final class ComparisonTest {

  /** JCGM 101:2008 7.9.2, its two examples from memory: 100.021 47 g, u 0.000 35 g, 2 digits. */
  @ParameterizedTest
  @CsvSource({
    "0.00035,2,0.000005",
    "0.35,2,0.005",
    "2,1,0.5",
    "35,2,0.5",
    "350,2,5",
    "0.0996,2,0.005",
    "0.35,1,0.05",
    "0.0999,1,0.05",
    "9.96,2,0.5",
    "9.94,2,0.05"
  })
  void toleranceIsHalfAUnitOfTheLastDigit(double u, int digits, double delta) {
    assertEquals(delta, Comparison.tolerance(u, digits), 1e-12 * delta);
  }

  @Test
  void bothEndsMustAgree() {
    Interval interval = new Interval(8, 12, 0.95);
    assertTrue(Comparison.of(10, 2.04, 1, interval, 2).validated()); // δ = 0.05
    assertFalse(Comparison.of(10, 2.06, 1, interval, 2).validated());
    assertFalse(Comparison.of(10.06, 2.0, 1, interval, 2).validated());
    assertFalse(Comparison.of(10, 2.0, 1, new Interval(8, 12.1, 0.95), 2).validated());
    assertFalse(Comparison.of(10, 2.0, 1, new Interval(7.9, 12, 0.95), 2).validated());
    Comparison c = Comparison.of(10, 3, 1, interval, 2);
    assertEquals(1, c.lowDifference());
    assertEquals(1, c.highDifference());
  }

  @Test
  void nonsenseIsRefused() {
    Interval interval = new Interval(8, 12, 0.95);
    assertThrows(IllegalArgumentException.class, () -> Comparison.tolerance(0, 2));
    assertThrows(IllegalArgumentException.class, () -> Comparison.tolerance(1, 0));
    assertThrows(IllegalArgumentException.class, () -> Comparison.tolerance(1, 4));
    assertThrows(
        IllegalArgumentException.class, () -> Comparison.of(Double.NaN, 1, 1, interval, 2));
    assertThrows(IllegalArgumentException.class, () -> Comparison.of(1, -1, 1, interval, 2));
  }

  private static Set<FirstOrderDoubt> doubts(
      double m, double um, double v, double uv, double nu, double flat) {
    return FirstOrderDoubt.of(m, um, v, uv, nu, flat);
  }

  @Test
  void anOrdinaryResultRaisesNoDoubt() {
    assertEquals(Set.of(), doubts(16.57, 0.14, 500, 3, 40, 0.1));
    assertEquals(Set.of(), doubts(16.57, 0.14, 500, 25, 5, 0.9)); // all on the line
    assertEquals(Set.of(), doubts(-0.1, 0.14, 500, 3, Double.POSITIVE_INFINITY, 0));
  }

  @Test
  void eachDoubtHasItsCause() {
    assertEquals(EnumSet.of(FirstOrderDoubt.VOLUME_UNCERTAIN), doubts(16, 0.1, 500, 26, 40, 0));
    assertEquals(EnumSet.of(FirstOrderDoubt.VOLUME_UNCERTAIN), doubts(16, 0.1, 500, 125, 40, 0));
    assertEquals(
        EnumSet.of(FirstOrderDoubt.VOLUME_UNCERTAIN, FirstOrderDoubt.VOLUME_NEAR_ZERO),
        doubts(16, 0.1, 500, 126, 40, 0));
    assertEquals(
        EnumSet.of(FirstOrderDoubt.FEW_DEGREES_OF_FREEDOM), doubts(16, 0.1, 500, 3, 4.9, 0));
    assertEquals(
        EnumSet.of(FirstOrderDoubt.ONE_FLAT_PART_DOMINATES), doubts(16, 0.1, 500, 3, 40, 0.91));
    assertEquals(
        EnumSet.of(FirstOrderDoubt.VOLUME_UNCERTAIN, FirstOrderDoubt.RESIDUE_NEAR_ZERO),
        doubts(-0.19, 0.1, 500, 30, 40, 0));
    assertEquals(EnumSet.of(FirstOrderDoubt.VOLUME_UNCERTAIN), doubts(0.2, 0.1, 500, 30, 40, 0));
  }

  @Test
  void doubtsRefuseNonsense() {
    assertThrows(IllegalArgumentException.class, () -> doubts(Double.NaN, 0.1, 500, 3, 40, 0));
    assertThrows(IllegalArgumentException.class, () -> doubts(1, -0.1, 500, 3, 40, 0));
    assertThrows(IllegalArgumentException.class, () -> doubts(1, 0.1, 0, 3, 40, 0));
    assertThrows(IllegalArgumentException.class, () -> doubts(1, 0.1, 500, -3, 40, 0));
    assertThrows(IllegalArgumentException.class, () -> doubts(1, 0.1, 500, 3, -1, 0));
    assertThrows(IllegalArgumentException.class, () -> doubts(1, 0.1, 500, 3, 40, 1.1));
  }

  /** The thresholds do what they claim: at 5 % the ends of the interval move by about 5 % of U. */
  @Test
  void atTheVolumeThresholdTheEndsMoveByAboutOneTwentieth() {
    List<Input> inputs = List.of(Input.normal(100, 0.01), Input.normal(1000, 50));
    ConcentrationModel model = new ConcentrationModel(1, 1);
    Linear.Result first = Linear.of(inputs, model);
    Interval i = new Propagation(1_000_000).run(inputs, model, 1).symmetric(0.95);
    double expanded = 1.96 * first.uncertainty();
    double shift = Math.abs(first.value() + expanded - i.high()) / expanded;
    assertTrue(shift > 0.05 && shift < 0.15, "shift " + shift);
  }

  /** GUM G.4.1 (check values A5): relative 0.25, 0.57, 0.82 % with ν 9, 4, 14: ν = 19.0. */
  @Test
  void effectiveDegreesOfFreedomOfTheGum() {
    Model product =
        (x, y, from, count) -> {
          for (int i = 0; i < count; i++) {
            y[from + i] = x[0][i] * x[1][i] * x[2][i];
          }
        };
    List<Input> inputs =
        List.of(
            Input.student(10, 0.025, 9), Input.student(5, 0.0285, 4), Input.student(2, 0.0164, 14));
    Linear.Result r = Linear.of(inputs, product);
    assertEquals(1.0295, 100 * r.uncertainty() / r.value(), 5e-4);
    assertEquals(19.0, r.degreesOfFreedom(), 0.05);
    double k = Quantiles.coverageFactor(0.95, Math.floor(r.degreesOfFreedom()));
    assertEquals(2.10, k, 0.011); // ν cut to 18 where 19.0 is 18.98
  }
}
