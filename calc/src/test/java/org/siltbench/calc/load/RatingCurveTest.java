package org.siltbench.calc.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.siltbench.calc.load.BiasCorrection.MINIMUM_VARIANCE;
import static org.siltbench.calc.load.BiasCorrection.NONE;
import static org.siltbench.calc.load.BiasCorrection.PARAMETRIC;
import static org.siltbench.calc.load.BiasCorrection.SMEARING;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.calc.stats.Line;
import org.siltbench.calc.stats.RunningSummary;

final class RatingCurveTest {

  private static final double[] Q = {0.4, 0.7, 1.2, 2.0, 3.5, 5.1, 8.0, 12.0};
  private static final double[] C = {12, 22, 30, 75, 110, 260, 300, 720};

  /** Reference: NumPy 2.4.6, polyfit in log10; mpmath 1.3.0 for the minimum-variance factor. */
  @Test
  void fitAndCorrectionsAgreeWithTheReference() {
    RatingCurve curve = RatingCurve.fit(Q, C, LogBase.TEN);
    assertEquals(1.4931830486450985, curve.line().intercept(), 1e-12);
    assertEquals(1.1822320550958143, curve.line().slope(), 1e-12);
    assertEquals(0.08948432940861628, curve.line().residualDeviation(), 1e-12);
    assertEquals(114.09092209039474, curve.at(3, NONE), 1e-9);
    assertEquals(1.015666960738654, curve.factor(3, SMEARING), 1e-12);
    assertEquals(1.0214542317351907, curve.factor(3, PARAMETRIC), 1e-12);
    assertEquals(1.01860186208607, curve.factor(3, MINIMUM_VARIANCE), 1e-12);
    assertEquals(114.09092209039474 * 1.015666960738654, curve.at(3, SMEARING), 1e-9);
    assertEquals(1, curve.factor(3, NONE));
  }

  /** Ferguson 1986, exp(2.651 s²), s in log10 units (check values A8). */
  @ParameterizedTest
  @CsvSource({"0.1,1.0269", "0.3,1.2695", "0.5,1.9401"})
  void parametricFactorOfFerguson(double s, double factor) {
    Line line = new Line(0, 1, 1, 0, 0, 0, s, 20, 0, 1);
    RatingCurve curve = new RatingCurve(LogBase.TEN, line, 1, 0.1, 10);
    assertEquals(factor, curve.factor(1, PARAMETRIC), 3e-4);
    assertEquals(Math.exp(2.651 * s * s), curve.factor(1, PARAMETRIC), 1e-4);
  }

  @Property(tries = 50)
  void theBaseOfTheLogarithmChangesNothing(
      @ForAll @DoubleRange(min = 0.05, max = 40) double discharge) {
    RatingCurve ten = RatingCurve.fit(Q, C, LogBase.TEN);
    RatingCurve e = RatingCurve.fit(Q, C, LogBase.E);
    for (BiasCorrection b : BiasCorrection.values()) {
      double expected = ten.at(discharge, b);
      assertEquals(expected, e.at(discharge, b), 1e-9 * expected);
    }
  }

  /** Finney's series is 0F1(; m/2; m·t/2): mpmath 1.3.0. */
  @ParameterizedTest
  @CsvSource({
    "4,0.3,1.33154591299605",
    "8,1.2,2.95939242712099",
    "20,2.5,9.72063993021079",
    "5,-0.4,0.653096662469987",
    "3,0,1"
  })
  void finneysSeries(int m, double t, double expected) {
    assertEquals(expected, RatingCurve.finney(m, t), 1e-13 * expected);
  }

  @Test
  void finneysSeriesTendsToTheExponential() {
    assertEquals(Math.exp(0.7), RatingCurve.finney(10_000_000, 0.7), 1e-6);
  }

  /** Simulated: with normal errors the minimum-variance estimate is unbiased, the median is low. */
  @Test
  void minimumVarianceIsUnbiasedForNormalErrors() {
    Random random = new Random(2);
    double sigma = 0.8;
    RunningSummary unbiased = new RunningSummary();
    RunningSummary median = new RunningSummary();
    RunningSummary parametric = new RunningSummary();
    for (int i = 0; i < 20_000; i++) {
      double[] y = new double[Q.length];
      for (int j = 0; j < y.length; j++) {
        y[j] = Math.exp(1 + 1.3 * Math.log(Q[j]) + sigma * random.nextGaussian());
      }
      RatingCurve curve = RatingCurve.fit(Q, y, LogBase.E);
      unbiased.add(curve.at(9, MINIMUM_VARIANCE));
      median.add(curve.at(9, NONE));
      parametric.add(curve.at(9, PARAMETRIC));
    }
    double truth = Math.exp(1 + 1.3 * Math.log(9) + sigma * sigma / 2);
    double tolerance = 4 * unbiased.summary().deviationOfMean();
    assertEquals(truth, unbiased.summary().mean(), tolerance);
    assertTrue(tolerance < 0.03 * truth);
    assertTrue(median.summary().mean() < 0.9 * truth);
    assertTrue(parametric.summary().mean() > truth + tolerance);
  }

  @Test
  void extrapolationIsSaid() {
    RatingCurve curve = RatingCurve.fit(Q, C, LogBase.TEN);
    assertFalse(curve.extrapolates(0.4));
    assertFalse(curve.extrapolates(12));
    assertTrue(curve.extrapolates(0.39));
    assertTrue(curve.extrapolates(12.1));
    assertTrue(curve.extrapolates(Double.NaN));
  }

  @Test
  void nonsenseIsRefused() {
    RatingCurve curve = RatingCurve.fit(Q, C, LogBase.TEN);
    assertThrows(IllegalArgumentException.class, () -> curve.at(0, NONE));
    assertThrows(IllegalArgumentException.class, () -> curve.factor(-1, NONE));
    double[] dry = Q.clone();
    dry[0] = 0;
    assertThrows(IllegalArgumentException.class, () -> RatingCurve.fit(dry, C, LogBase.E));
    assertThrows(IllegalArgumentException.class, () -> RatingCurve.fit(Q, dry, LogBase.E));
    assertThrows(
        IllegalArgumentException.class,
        () -> RatingCurve.fit(new double[] {1, 2}, new double[] {1, 2}, LogBase.E));
    assertThrows(
        IllegalArgumentException.class,
        () -> RatingCurve.fit(new double[] {2, 2, 2}, new double[] {1, 2, 3}, LogBase.E));
  }
}
