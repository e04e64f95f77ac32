package org.siltbench.calc.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NonCentralTTest {

  /** Reference: SciPy 1.17.1, scipy.stats.nct.cdf(t, nu, delta). */
  @ParameterizedTest
  @CsvSource({
    "2,3,1,0.7436298684076654",
    "1.5,10,2,0.3047854473760421",
    "-1,5,0.5,0.08244409105672337",
    "3,1,1,0.7301025986105634",
    "2.0,100,2,0.4980144587870451"
  })
  void agreesWithScipy(double t, double nu, double delta, double expected) {
    assertEquals(expected, NonCentralT.probability(t, nu, delta), 1e-9);
  }

  /**
   * Reference: SciPy 1.17.1, root of nct.cdf(t.ppf(1-a, nu), nu, d) = b. For alpha = beta = 0.05
   * and 4 degrees of freedom Currie (1995) prints 4.07, from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "1,12.528978086996366,82.00468180797577",
    "2,5.515883056824301,15.217227542304512",
    "3,4.4563608612069805,9.33749838196652",
    "4,4.067275641161186,7.520263905728448",
    "5,3.8699418122421005,6.683198641967401",
    "6,3.7516037904546966,6.21267026965172",
    "9,3.5753848340447845,5.5615152473913145",
    "10,3.543040849041223,5.449027044794267",
    "20,3.408323830403886,5.006146882113409",
    "50,3.3353555622315016,4.78451242161798"
  })
  void nonCentralityAgreesWithScipy(double nu, double at5, double at1) {
    assertEquals(at5, NonCentralT.nonCentrality(nu, 0.05, 0.05), 1e-7 * at5);
    assertEquals(at1, NonCentralT.nonCentrality(nu, 0.01, 0.01), 1e-7 * at1);
  }

  @Test
  void tendsToTheNormalFactor() {
    assertEquals(
        3.2897072539, NonCentralT.nonCentrality(Double.POSITIVE_INFINITY, 0.05, 0.05), 1e-9);
    assertEquals(3.2897, NonCentralT.nonCentrality(100_000, 0.05, 0.05), 1e-4);
    assertTrue(NonCentralT.nonCentrality(1, 0.001, 0.001) > 1000);
  }

  @Test
  void withNoOffsetItIsStudentsT() {
    for (double nu : new double[] {1, 2.5, 7, 29, 30, 31, 400}) {
      assertEquals(0.95, NonCentralT.probability(Quantiles.student(0.95, nu), nu, 0), 1e-7);
    }
    assertEquals(0.5, NonCentralT.probability(0, 5, 0), 1e-10);
  }

  /** Simulated reference: seeded draws of (Z + delta)/sqrt(W/nu). */
  @Test
  void agreesWithItsOwnDefinitionBySimulation() {
    java.util.Random random = new java.util.Random(11);
    int hits = 0;
    int trials = 200_000;
    for (int i = 0; i < trials; i++) {
      double w = 0;
      for (int j = 0; j < 4; j++) {
        double z = random.nextGaussian();
        w += z * z;
      }
      hits += (random.nextGaussian() + 1.3) / Math.sqrt(w / 4) <= 2.1 ? 1 : 0;
    }
    double p = NonCentralT.probability(2.1, 4, 1.3);
    assertEquals(p, hits / (double) trials, 4 * Math.sqrt(p * (1 - p) / trials));
  }

  @Property(tries = 60)
  void fallsAsTheOffsetGrows(
      @ForAll @IntRange(min = 1, max = 60) int nu,
      @ForAll @DoubleRange(min = 0, max = 6) double delta) {
    assertTrue(NonCentralT.probability(2, nu, delta) > NonCentralT.probability(2, nu, delta + 0.1));
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> NonCentralT.probability(Double.NaN, 3, 1));
    assertThrows(IllegalArgumentException.class, () -> NonCentralT.probability(1, 0.5, 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> NonCentralT.probability(1, 3, Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> NonCentralT.nonCentrality(3, 0, 0.05));
    assertThrows(IllegalArgumentException.class, () -> NonCentralT.nonCentrality(3, 0.05, 0.6));
    assertThrows(
        IllegalArgumentException.class, () -> NonCentralT.nonCentrality(Double.NaN, 0.05, 0.05));
  }
}
