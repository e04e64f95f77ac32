package org.siltbench.calc.detection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.calc.stats.Line;

final class DetectionTest {

  private static final double[] BLANKS = {0.2, -0.1, 0.3, 0.1, 0.0, 0.2, 0.4};

  private static double[] spread(int n) {
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = i % 2;
    }
    return x;
  }

  /** 40 CFR part 136 appendix B, table of t(n − 1, 0.99) (check values A6). */
  @ParameterizedTest
  @CsvSource({
    "7,3.143",
    "8,2.998",
    "9,2.896",
    "10,2.821",
    "11,2.764",
    "16,2.602",
    "21,2.528",
    "26,2.485",
    "31,2.457",
    "61,2.390"
  })
  void studentFactorsOfAppendixB(int n, double t) {
    assertEquals(t, MethodDetectionLimit.ofSpikes(spread(n)).factor(), 5.1e-4);
  }

  /** Check values A6; the value printed there takes t rounded to 3.143, so 1e-4. */
  @Test
  void limitFromSevenBlanks() {
    MethodDetectionLimit m = MethodDetectionLimit.ofBlanks(BLANKS);
    assertEquals(0.15714, m.mean(), 5e-6);
    assertEquals(0.17182, m.deviation(), 5e-6);
    assertEquals(0.6972, m.limit(), 1e-4);
    assertEquals(MethodDetectionLimit.Basis.BLANKS, m.basis());
    assertEquals(7, m.n());
  }

  @Test
  void spikesLeaveTheMeanOut() {
    MethodDetectionLimit m = MethodDetectionLimit.ofSpikes(BLANKS);
    assertEquals(0.6972 - 0.15714, m.limit(), 1e-4);
    assertEquals(MethodDetectionLimit.Basis.SPIKES, m.basis());
  }

  @Test
  void aNegativeMeanOfTheBlanksCountsAsZero() {
    double[] negative = Arrays.stream(BLANKS).map(x -> x - 1).toArray();
    assertEquals(0.6972 - 0.15714, MethodDetectionLimit.ofBlanks(negative).limit(), 1e-4);
  }

  @Test
  void hostileBlanks() {
    double[] equal = {0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1};
    assertEquals(0.1, MethodDetectionLimit.ofBlanks(equal).limit(), 1e-15);
    assertEquals(0, MethodDetectionLimit.ofSpikes(equal).limit());
    assertThrows(IllegalArgumentException.class, () -> MethodDetectionLimit.ofBlanks(0.1));
    assertThrows(
        IllegalArgumentException.class, () -> MethodDetectionLimit.ofBlanks(1, 2, 3, 4, 5, 6));
    double[] bad = BLANKS.clone();
    bad[3] = Double.NaN;
    assertThrows(IllegalArgumentException.class, () -> MethodDetectionLimit.ofBlanks(bad));
    bad[3] = Double.POSITIVE_INFINITY;
    assertThrows(IllegalArgumentException.class, () -> MethodDetectionLimit.ofSpikes(bad));
  }

  /** Chi-square limits for 7 results, 0.644 and 2.202 (check values, trap 3). */
  @Test
  void confidenceIntervalOfTheLimit() {
    MethodDetectionLimit m = MethodDetectionLimit.ofSpikes(BLANKS);
    assertEquals(0.644393407932372 * m.limit(), m.confidenceInterval()[0], 1e-9);
    assertEquals(2.2020661128215577 * m.limit(), m.confidenceInterval()[1], 1e-9);
    MethodDetectionLimit b = MethodDetectionLimit.ofBlanks(BLANKS);
    assertEquals(
        b.mean() + 0.644393407932372 * (b.limit() - b.mean()), b.confidenceInterval()[0], 1e-9);
  }

  @Test
  void ninetyNinthOfManyBlanks() {
    double[] many = new double[200];
    for (int i = 0; i < 200; i++) {
      many[i] = (i * 37) % 200;
    }
    assertEquals(197, MethodDetectionLimit.percentileOfBlanks(many)); // rank 198
    assertEquals(
        99, MethodDetectionLimit.percentileOfBlanks(Arrays.copyOf(sorted(many), 101))); // rank 100
    assertThrows(
        IllegalArgumentException.class,
        () -> MethodDetectionLimit.percentileOfBlanks(new double[100]));
  }

  private static double[] sorted(double[] x) {
    double[] y = x.clone();
    Arrays.sort(y);
    return y;
  }

  @Test
  void theGreaterOfSpikesAndBlanksIsTheLimit() {
    MethodDetectionLimit s = MethodDetectionLimit.ofSpikes(BLANKS);
    MethodDetectionLimit b = MethodDetectionLimit.ofBlanks(BLANKS);
    assertSame(b, MethodDetectionLimit.greater(s, b));
    assertSame(b, MethodDetectionLimit.greater(b, s));
    assertSame(s, MethodDetectionLimit.greater(s, MethodDetectionLimit.ofSpikes(BLANKS)));
  }

  @Property(tries = 100)
  void theLimitScalesWithTheUnitAndNotWithOrder(
      @ForAll @Size(min = 7, max = 20) List<@DoubleRange(min = -1, max = 1) Double> drawn) {
    double[] x = drawn.stream().mapToDouble(Double::doubleValue).toArray();
    double limit = MethodDetectionLimit.ofBlanks(x).limit();
    double[] y = Arrays.stream(sorted(x)).map(v -> v * 1000).toArray();
    assertEquals(limit * 1000, MethodDetectionLimit.ofBlanks(y).limit(), 1e-8);
  }

  /** Currie, Anal. Chem. 40 (1968) 586, from memory (check values A6). */
  @Test
  void currieWithAKnownBlank() {
    CurrieLimits l = CurrieLimits.known(1, 0.05, 0.05);
    assertEquals(1.645, l.critical(), 2e-4);
    assertEquals(3.29, l.detection(), 3e-4);
    assertEquals(10, l.determination());
    CurrieLimits paired = CurrieLimits.known(CurrieLimits.deviationAtZero(1, 1), 0.05, 0.05);
    assertEquals(2.33, paired.critical(), 5e-3); // table II, paired observations
    assertEquals(4.65, paired.detection(), 5e-3);
    assertEquals(14.1, paired.determination(), 5e-2);
    assertEquals(Math.sqrt(1.1), CurrieLimits.deviationAtZero(1, 10), 1e-15);
    assertEquals(new CurrieLimits(0, 0, 0), CurrieLimits.known(0, 0.05, 0.05));
    CurrieLimits unequal = CurrieLimits.known(2, 0.01, 0.05);
    assertEquals(2 * 2.3263478740, unequal.critical(), 1e-9);
    assertEquals(2 * (2.3263478740 + 1.6448536270), unequal.detection(), 1e-8);
  }

  /** t(0.95; 4) = 2.132 and delta = 4.07: Currie, Pure Appl. Chem. 67 (1995) 1699, from memory. */
  @Test
  void currieWithAnEstimatedBlankUsesTheNonCentralFactor() {
    CurrieLimits l = CurrieLimits.estimated(0.5, 4, 0.05, 0.05);
    assertEquals(0.5 * 2.1318467863, l.critical(), 1e-8);
    assertEquals(0.5 * 4.067275641161186, l.detection(), 1e-7); // SciPy 1.17.1
    assertEquals(5, l.determination());
    assertTrue(l.detection() < 2 * l.critical());
    CurrieLimits many = CurrieLimits.estimated(0.5, Double.POSITIVE_INFINITY, 0.05, 0.05);
    assertEquals(CurrieLimits.known(0.5, 0.05, 0.05).detection(), many.detection(), 1e-9);
  }

  @Test
  void currieRefusesNonsense() {
    assertThrows(IllegalArgumentException.class, () -> CurrieLimits.known(-1, 0.05, 0.05));
    assertThrows(IllegalArgumentException.class, () -> CurrieLimits.known(1, 0, 0.05));
    assertThrows(IllegalArgumentException.class, () -> CurrieLimits.known(1, 0.05, 0.51));
    assertThrows(IllegalArgumentException.class, () -> CurrieLimits.deviationAtZero(1, 0));
    assertThrows(IllegalArgumentException.class, () -> CurrieLimits.deviationAtZero(-1, 2));
    assertThrows(IllegalArgumentException.class, () -> CurrieLimits.estimated(1, 0, 0.05, 0.05));
    assertThrows(IllegalArgumentException.class, () -> CurrieLimits.estimated(1, 4, 0.6, 0.05));
    assertThrows(IllegalArgumentException.class, () -> CurrieLimits.estimated(1, 4, 0.05, 0));
    assertThrows(IllegalArgumentException.class, () -> CurrieLimits.estimated(-1, 4, 0.05, 0.1));
  }

  /** ISO 11843-2:2000 5.2, 5.3 by its formula, from another path: t·s/b·√(1/K + 1/n + x̄²/sxx). */
  @Test
  void limitsFromACalibration() {
    double[] x = {0, 1, 2, 4, 8};
    double[] y = {0.1, 1.0, 2.2, 3.9, 8.1};
    CalibrationLimits c = CalibrationLimits.of(x, y, 2, 0.05, 0.05);
    Line line = Line.fit(x, y, 0);
    double unit = line.residualDeviation() / line.slope() * Math.sqrt(0.5 + 0.2 + 9.0 / 40);
    assertEquals(3, c.degreesOfFreedom());
    assertEquals(2.3533634348 * unit, c.critical(), 1e-9); // t(0.95; 3)
    assertEquals(4.4563608612 * unit, c.detectable(), 1e-7); // SciPy 1.17.1
    assertEquals(4.4563608612, c.nonCentrality(), 1e-7);
  }

  @Test
  void calibrationRefusesNonsense() {
    double[] x = {0, 1, 2};
    assertThrows(
        IllegalArgumentException.class,
        () -> CalibrationLimits.of(x, new double[] {2, 1, 0}, 1, 0.05, 0.05));
    assertThrows(IllegalArgumentException.class, () -> CalibrationLimits.of(x, x, 0, 0.05, 0.05));
    assertEquals(0, CalibrationLimits.of(x, x, 1, 0.05, 0.05).critical(), 1e-12);
  }

  /** Simulation of the claim itself: a true value at x_D is missed 5 % of the time. */
  @Test
  void aValueAtTheDetectionLimitIsMissedAsOftenAsStated() {
    Random random = new Random(5);
    int missed = 0;
    int falsely = 0;
    int trials = 40_000;
    CurrieLimits unit = CurrieLimits.estimated(1, 6, 0.05, 0.05);
    for (int i = 0; i < trials; i++) {
      double w = 0;
      for (int j = 0; j < 6; j++) {
        w += Math.pow(random.nextGaussian(), 2);
      }
      double critical = unit.critical() * Math.sqrt(w / 6);
      missed += unit.detection() + random.nextGaussian() <= critical ? 1 : 0;
      falsely += random.nextGaussian() > critical ? 1 : 0;
    }
    double tolerance = 4 * Math.sqrt(0.05 * 0.95 / trials);
    assertEquals(0.05, missed / (double) trials, tolerance);
    assertEquals(0.05, falsely / (double) trials, tolerance);
  }

  @Test
  void reportingLimitIsDecidedByTheWorst() {
    assertEquals(
        new ReportingLimit(5, ReportingLimit.Decider.METHOD),
        ReportingLimit.of(2.5, 0.1, 0.2, 0.5));
    assertEquals(
        new ReportingLimit(8, ReportingLimit.Decider.BALANCE),
        ReportingLimit.of(2.5, 0.4, 0.2, 0.5));
    assertEquals(
        new ReportingLimit(12, ReportingLimit.Decider.BLANK),
        ReportingLimit.of(2.5, 0.4, 0.6, 0.5));
    assertEquals(ReportingLimit.Decider.METHOD, ReportingLimit.of(2, 0.2, 0.2, 1).decidedBy());
    assertEquals(ReportingLimit.Decider.BALANCE, ReportingLimit.of(1, 0.2, 0.2, 1).decidedBy());
  }

  @Test
  void standingKeepsToTheLimits() {
    ReportingLimit rl = ReportingLimit.of(2.5, 0.1, 0.1, 0.5);
    assertEquals(Standing.NOT_DETECTED, rl.standing(-0.4, 1.2));
    assertEquals(Standing.NOT_DETECTED, rl.standing(1.19, 1.2));
    assertEquals(Standing.BELOW_REPORTING_LIMIT, rl.standing(1.2, 1.2));
    assertEquals(Standing.BELOW_REPORTING_LIMIT, rl.standing(4.99, 1.2));
    assertEquals(Standing.QUANTIFIED, rl.standing(5, 1.2));
    assertThrows(IllegalArgumentException.class, () -> rl.standing(Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> rl.standing(1, -1));
  }

  @Test
  void reportingLimitRefusesNonsense() {
    assertThrows(IllegalArgumentException.class, () -> ReportingLimit.of(-1, 0, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> ReportingLimit.of(1, -1, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> ReportingLimit.of(1, 0, -1, 1));
    assertThrows(IllegalArgumentException.class, () -> ReportingLimit.of(1, 0, 0, 0));
    assertFalse(Double.isNaN(ReportingLimit.of(0, 0, 0, 1).value()));
  }

  @Test
  void halfIsAllowedAndMeansNoProtection() {
    CurrieLimits l = CurrieLimits.known(1, 0.5, 0.5);
    assertEquals(0, l.critical(), 1e-12);
    assertEquals(0, l.detection(), 1e-12);
  }
}
