package org.siltbench.calc.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class QuantilesTest {

  /** GUM (JCGM 100:2008) table G.2 (check values A5). */
  @ParameterizedTest
  @CsvSource({
    "1,12.71,13.97",
    "2,4.30,4.53",
    "3,3.18,3.31",
    "4,2.78,2.87",
    "5,2.57,2.65",
    "10,2.23,2.28",
    "20,2.09,2.13",
    "50,2.01,2.05"
  })
  void coverageFactorsOfTheGum(double nu, double k95, double k9545) {
    assertEquals(k95, Quantiles.coverageFactor(0.95, nu), 0.005001);
    assertEquals(k9545, Quantiles.coverageFactor(0.9545, nu), 0.005001);
  }

  /** GUM table G.2 (check values A5), 95 % only. */
  @ParameterizedTest
  @CsvSource({"6,2.45", "8,2.31"})
  void coverageFactorsOfTheGumAtNinetyFive(double nu, double k95) {
    assertEquals(k95, Quantiles.coverageFactor(0.95, nu), 0.005001);
  }

  @Test
  void infiniteDegreesOfFreedomAreNormal() {
    assertEquals(1.959963984540054, Quantiles.coverageFactor(0.95, Double.POSITIVE_INFINITY), 1e-9);
    assertEquals(2.326347874040841, Quantiles.student(0.99, Double.POSITIVE_INFINITY), 1e-9);
  }

  /** Another library: commons-math3 3.6.1. */
  @ParameterizedTest
  @CsvSource({"0.9,3.5", "0.975,19", "0.99,6", "0.05,2"})
  void agreesWithCommonsMath(double p, double nu) {
    assertEquals(
        new TDistribution(nu).inverseCumulativeProbability(p), Quantiles.student(p, nu), 1e-7);
    assertEquals(
        new ChiSquaredDistribution(nu).inverseCumulativeProbability(p),
        Quantiles.chiSquare(p, nu),
        1e-6);
    assertEquals(
        new NormalDistribution().inverseCumulativeProbability(p), Quantiles.normal(p), 1e-8);
    assertEquals(p, Quantiles.normalProbability(Quantiles.normal(p)), 1e-12);
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Quantiles.normal(0));
    assertThrows(IllegalArgumentException.class, () -> Quantiles.normal(1));
    assertThrows(IllegalArgumentException.class, () -> Quantiles.student(0.5, 0));
    assertThrows(IllegalArgumentException.class, () -> Quantiles.student(0.5, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Quantiles.student(1.5, 3));
    assertThrows(
        IllegalArgumentException.class, () -> Quantiles.student(1.5, Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> Quantiles.coverageFactor(1, 3));
    assertThrows(IllegalArgumentException.class, () -> Quantiles.chiSquare(0.5, 0));
    assertThrows(IllegalArgumentException.class, () -> Quantiles.chiSquare(-0.5, 3));
  }

  /** The fast factors against the exact quantile, from one degree of freedom to a million. */
  @ParameterizedTest
  @CsvSource({"0.5", "0.6827", "0.9", "0.95", "0.9545", "0.99", "0.9973", "0.999"})
  void fastFactorsAgreeWithTheExactOnes(double p) {
    CoverageFactors factors = CoverageFactors.of(p);
    for (double nu = 1; nu < 1e6; nu *= 1.37) {
      double exact = Quantiles.coverageFactor(p, nu);
      assertEquals(exact, factors.at(nu), 1e-10 * exact);
    }
    assertEquals(
        Quantiles.coverageFactor(p, Double.POSITIVE_INFINITY),
        factors.at(Double.POSITIVE_INFINITY));
    assertEquals(Quantiles.coverageFactor(p, 0.7), factors.at(0.7));
  }

  @Test
  void fastFactorsRefuseNonsense() {
    assertThrows(IllegalArgumentException.class, () -> CoverageFactors.of(1));
    CoverageFactors factors = CoverageFactors.of(0.95);
    assertThrows(IllegalArgumentException.class, () -> factors.at(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> factors.at(0));
    assertThrows(IllegalArgumentException.class, () -> factors.at(-3));
  }
}
