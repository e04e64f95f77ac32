package org.siltbench.calc.montecarlo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.stats.Quantiles;

final class PropagationTest {

  private static final Model SUM =
      (inputs, outputs, from, count) -> {
        for (int i = 0; i < count; i++) {
          double sum = 0;
          for (double[] column : inputs) {
            sum += column[i];
          }
          outputs[from + i] = sum;
        }
      };

  private static final Model FIRST =
      (inputs, outputs, from, count) -> System.arraycopy(inputs[0], 0, outputs, from, count);

  /** JCGM 101:2008 9.2.2, from memory (check values A5): 0, 2.00, ± 3.92. */
  @Test
  void fourNormalInputs() {
    Outcome o = new Propagation(1_000_000).run(Collections.nCopies(4, Input.normal(0, 1)), SUM, 1);
    assertEquals(0, o.mean(), 0.01);
    assertEquals(2.00, o.standardUncertainty(), 0.01);
    assertEquals(-3.92, o.symmetric(0.95).low(), 0.02);
    assertEquals(3.92, o.symmetric(0.95).high(), 0.02);
    assertEquals(7.84, o.shortest(0.95).length(), 0.03);
  }

  /** JCGM 101:2008 9.2.3 (check values A5): four rectangular inputs of u = 1 give ± 3.8794. */
  @Test
  void fourRectangularInputs() {
    List<Input> inputs = Collections.nCopies(4, Input.rectangular(0, Math.sqrt(3)));
    Outcome o = new Propagation(1_000_000).run(inputs, SUM, 2);
    assertEquals(2, o.standardUncertainty(), 0.01);
    assertEquals(-3.8794, o.symmetric(0.95).low(), 0.015);
    assertEquals(3.8794, o.symmetric(0.95).high(), 0.015);
  }

  /**
   * JCGM 101:2008 9.3, mass calibration, data and results from memory: by distributions 1.2341 mg,
   * u 0.0754 mg, shortest 95 % interval [1.0834, 1.3825]; first order u 0.0538 mg, not validated.
   */
  @Test
  void massCalibrationWhereTheFirstOrderFails() {
    Model model =
        (x, y, from, count) -> {
          for (int i = 0; i < count; i++) {
            double buoyancy = 1 + (x[2][i] - 1.2) * (1 / x[3][i] - 1 / x[4][i]);
            y[from + i] = (x[0][i] + x[1][i]) * buoyancy - 100_000;
          }
        };
    List<Input> inputs =
        List.of(
            Input.normal(100_000, 0.050),
            Input.normal(1.234, 0.020),
            Input.rectangular(1.20, 0.10),
            Input.rectangular(8000, 1000),
            Input.rectangular(8000, 50));
    Outcome o = new Propagation(1_000_000).run(inputs, model, 3);
    assertEquals(1.2341, o.mean(), 5e-4);
    assertEquals(0.0754, o.standardUncertainty(), 5e-4);
    Interval shortest = o.shortest(0.95);
    assertEquals(1.0834, shortest.low(), 3e-3);
    assertEquals(1.3825, shortest.high(), 3e-3);
    Linear.Result first = Linear.of(inputs, model);
    assertEquals(1.2340, first.value(), 5e-5);
    assertEquals(0.0538, first.uncertainty(), 6e-5);
    Interval symmetric = o.symmetric(0.95);
    assertFalse(
        Comparison.of(first.value(), 1.96 * first.uncertainty(), first.uncertainty(), symmetric, 1)
            .validated());
  }

  /** JCGM 101:2008 9.4.2.2, x1 = 0.010, u = 0.005: moments also by hand, 150e-6 and 111.8e-6. */
  @Test
  void sumOfSquaresNearItsLeastValue() {
    Model model =
        (x, y, from, count) -> {
          for (int i = 0; i < count; i++) {
            y[from + i] = x[0][i] * x[0][i] + x[1][i] * x[1][i];
          }
        };
    List<Input> inputs = List.of(Input.normal(0.010, 0.005), Input.normal(0, 0.005));
    Outcome o = new Propagation(1_000_000).run(inputs, model, 4);
    assertEquals(150e-6, o.mean(), 5e-7);
    assertEquals(111.8e-6, o.standardUncertainty(), 1e-6);
    assertEquals(0, o.shortest(0.95).low(), 2e-6);
    assertEquals(367e-6, o.shortest(0.95).high(), 4e-6); // printed value from memory
  }

  /** Check values A1: 33.14 mg/L, u = 0.3457 mg/L. */
  @Test
  void concentrationOfTheCheckValues() {
    List<Input> inputs =
        List.of(Input.normal(128.91, 0.1), Input.normal(-112.34, 0.1), Input.normal(500, 3));
    ConcentrationModel model = new ConcentrationModel(2, 1);
    Linear.Result first = Linear.of(inputs, model);
    assertEquals(33.14, first.value(), 1e-9);
    assertEquals(0.3457, first.uncertainty(), 5e-5);
    assertEquals(Double.POSITIVE_INFINITY, first.degreesOfFreedom());
    Outcome o = new Propagation(1_000_000).run(inputs, model, 5);
    assertEquals(33.141, o.mean(), 2e-3);
    assertEquals(0.3457, o.standardUncertainty(), 1e-3);
    Comparison c =
        Comparison.of(
            first.value(), 1.96 * first.uncertainty(), first.uncertainty(), o.symmetric(0.95), 1);
    assertTrue(c.validated(), c.toString());
  }

  @Test
  void severalPartsOfTheVolumeAddUp() {
    List<Input> inputs = List.of(Input.normal(10, 0), Input.normal(200, 0), Input.normal(50, 0));
    assertEquals(40, Linear.of(inputs, new ConcentrationModel(1, 2)).value(), 1e-12);
    assertEquals(4200, Linear.of(inputs, new ConcentrationModel(2, 1)).value(), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> new ConcentrationModel(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new ConcentrationModel(1, 0));
  }

  /** A pre-mass and post-mass that share an error: one input used with both signs drops out. */
  @Test
  void aSharedInputIsCorrelated() {
    Model model =
        (x, y, from, count) -> {
          for (int i = 0; i < count; i++) {
            y[from + i] = (x[0][i] + x[2][i]) - (x[1][i] + x[2][i]);
          }
        };
    List<Input> inputs = List.of(Input.normal(5, 0.03), Input.normal(3, 0.04), Input.normal(0, 10));
    assertEquals(0.05, Linear.of(inputs, model).uncertainty(), 1e-9);
    Outcome o = new Propagation(200_000).run(inputs, model, 6);
    assertEquals(2, o.mean(), 1e-3);
    assertEquals(0.05, o.standardUncertainty(), 5e-4);
  }

  @Test
  void shapesHaveTheirStandardDeviation() {
    Propagation p = new Propagation(400_000);
    for (Spread s :
        List.of(
            new Spread.Normal(2),
            new Spread.Rectangular(2),
            new Spread.Triangular(2),
            new Spread.Student(2, 8))) {
      Outcome o = p.run(List.of(new Input(7, s)), FIRST, 9);
      assertEquals(7, o.mean(), 0.02);
      assertEquals(s.standardDeviation(), o.standardUncertainty(), 0.012);
    }
    assertEquals(2 / Math.sqrt(3), new Spread.Rectangular(2).standardDeviation(), 1e-15);
    assertEquals(2 / Math.sqrt(6), new Spread.Triangular(2).standardDeviation(), 1e-15);
    assertEquals(2 * Math.sqrt(8 / 6.0), new Spread.Student(2, 8).standardDeviation(), 1e-15);
    assertTrue(Double.isNaN(new Spread.Student(2, 2).standardDeviation()));
  }

  @Test
  void flatShapesKeepToTheirHalfWidth() {
    Propagation p = new Propagation(100_000);
    Outcome flat = p.run(List.of(Input.rectangular(10, 3)), FIRST, 1);
    assertEquals(7, flat.quantile(1e-5), 0.001);
    assertEquals(13, flat.quantile(0.999_995), 0.001);
    assertEquals(10.6, flat.quantile(0.6), 0.03);
    Outcome tri = p.run(List.of(Input.triangular(10, 3)), FIRST, 1);
    assertTrue(tri.quantile(1e-5) >= 7);
    assertTrue(tri.quantile(0.999_995) <= 13);
    assertEquals(10 - 3 * (1 - Math.sqrt(0.5)), tri.quantile(0.25), 0.03);
  }

  /** GUM table G.2 by the other path: the t shape's interval is ± t·scale. */
  @Test
  void fewObservationsGiveStudentsInterval() {
    Outcome o = new Propagation(1_000_000).run(List.of(Input.student(0, 1, 4)), FIRST, 8);
    assertEquals(Quantiles.coverageFactor(0.95, 4), o.symmetric(0.95).high(), 0.03);
    assertEquals(-2.78, o.symmetric(0.95).low(), 0.03);
  }

  @Test
  void theSeedRepeatsTheRunAndAnotherDoesNot() {
    List<Input> inputs = List.of(Input.normal(1, 0.1), Input.rectangular(2, 0.5));
    Propagation p = new Propagation(5_000);
    Outcome a = p.run(inputs, SUM, 77);
    double mean = a.mean();
    Interval interval = a.symmetric(0.95);
    assertEquals(77, a.seed());
    assertEquals(5_000, a.trials());
    assertEquals(5_000, p.trials());
    Outcome b = new Propagation(5_000).run(inputs, SUM, 77);
    assertEquals(mean, b.mean());
    assertEquals(interval, b.symmetric(0.95));
    assertNotEquals(mean, p.run(inputs, SUM, 78).mean());
  }

  @Test
  void aSecondRunWithMoreInputsReusesTheObject() {
    Propagation p = new Propagation(2_000);
    assertEquals(1, p.run(List.of(Input.normal(1, 0)), FIRST, 1).mean());
    Model lastOfThree = (x, y, from, count) -> System.arraycopy(x[2], 0, y, from, count);
    List<Input> three = List.of(Input.normal(1, 0), Input.normal(2, 0), Input.normal(3, 0));
    assertEquals(3, p.run(three, lastOfThree, 1).mean());
    assertEquals(6, p.run(three, SUM, 1).mean());
    assertEquals(1, p.run(List.of(Input.normal(1, 0)), SUM, 1).mean());
    assertEquals(6, p.run(three, SUM, 1).mean());
  }

  @Test
  void symmetricIntervalIsTheSameSortedOrNot() {
    List<Input> inputs = List.of(Input.normal(1, 0.1));
    Outcome o = new Propagation(10_001).run(inputs, FIRST, 1);
    Interval before = o.symmetric(0.95);
    double median = o.quantile(0.5);
    o.shortest(0.9);
    assertEquals(before, o.symmetric(0.95));
    assertEquals(median, o.quantile(0.5));
  }

  /** JCGM 101:2008 7.7.2 by counting: M = 1000 known values, p = 0.95: q = 950, r = 25. */
  @Test
  void endsOfTheIntervalsAreTheCountedOnes() {
    Model counting =
        (x, y, from, count) -> {
          for (int i = 0; i < count; i++) {
            int k = from + i;
            y[k] = (k * 7) % 1000 + 1;
          }
        };
    Propagation p = new Propagation(1_000);
    Outcome o = p.run(List.of(Input.normal(0, 1)), counting, 1);
    assertEquals(new Interval(25, 975, 0.95), o.symmetric(0.95));
    assertEquals(500, o.quantile(0.5));
    assertEquals(501, o.quantile(0.5001));
    assertEquals(new Interval(1, 951, 0.95), o.shortest(0.95));
    assertEquals(new Interval(25, 975, 0.95), o.symmetric(0.95));
    assertEquals(500.5, o.mean());
    assertEquals(Math.sqrt(1000.0 * 1001 / 12), o.standardUncertainty(), 1e-9);
    assertEquals(950, o.symmetric(0.95).length());
    Outcome odd = p.run(List.of(Input.normal(0, 1)), counting, 1);
    assertEquals(new Interval(26, 975, 0.949), odd.symmetric(0.949)); // M − q odd: r = 26
    assertEquals(new Interval(1, 999, 0.998), odd.symmetric(0.998));
    assertThrows(IllegalArgumentException.class, () -> odd.symmetric(0.999));
    assertThrows(IllegalArgumentException.class, () -> odd.symmetric(1));
    assertThrows(IllegalArgumentException.class, () -> odd.shortest(0.0001));
    assertThrows(IllegalArgumentException.class, () -> odd.quantile(0));
  }

  @Test
  void shortestIntervalFindsTheDensePart() {
    Model skewed =
        (x, y, from, count) -> {
          for (int i = 0; i < count; i++) {
            y[from + i] = -Math.log(1 - (from + i + 0.5) / 10_000);
          }
        };
    Outcome o = new Propagation(10_000).run(List.of(Input.normal(0, 1)), skewed, 1);
    Interval s = o.shortest(0.95);
    assertEquals(0, s.low(), 1e-3);
    assertEquals(-Math.log(0.05), s.high(), 2e-3); // exponential: [0, 2.996]
    assertEquals(-Math.log(0.975), o.symmetric(0.95).low(), 2e-3);
    assertTrue(s.holds(1));
    assertFalse(s.holds(s.high() + 1e-9));
    assertFalse(s.holds(s.low() - 1e-9));
    assertTrue(s.holds(s.low()));
    assertTrue(s.holds(s.high()));
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Propagation(999));
    assertThrows(IllegalArgumentException.class, () -> new Propagation(10_000_001));
    Propagation p = new Propagation(1_000);
    assertThrows(IllegalArgumentException.class, () -> p.run(List.of(), SUM, 1));
    Model divides =
        (x, y, from, count) -> {
          for (int i = 0; i < count; i++) {
            y[from + i] = 1 / x[0][i];
          }
        };
    assertThrows(
        IllegalArgumentException.class, () -> p.run(List.of(Input.normal(0, 0)), divides, 1));
    assertThrows(IllegalArgumentException.class, () -> Input.normal(Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> Input.normal(1, -1));
    assertThrows(IllegalArgumentException.class, () -> Input.rectangular(1, -1));
    assertThrows(IllegalArgumentException.class, () -> Input.triangular(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Input.student(1, -1, 5));
    assertThrows(IllegalArgumentException.class, () -> Input.student(1, 1, 0.5));
  }

  @Test
  void aLargeValueDoesNotHideASmallSpread() {
    Outcome o = new Propagation(100_000).run(List.of(Input.normal(1e9, 1e-3)), FIRST, 1);
    assertEquals(1e-3, o.standardUncertainty(), 2e-5);
  }

  /** Exact binomial bounds: of 2 000 drawn results the 95 % interval must hold 1 861 to 1 938. */
  @Test
  void intervalsHoldTheTruthAsOftenAsStated() {
    Random random = new Random(12);
    Propagation p = new Propagation(2_000);
    ConcentrationModel model = new ConcentrationModel(1, 1);
    int held = 0;
    for (int i = 0; i < 2_000; i++) {
      double residue = 8 + 0.2 * random.nextGaussian();
      double volume = 250 + 2.5 * random.nextGaussian();
      List<Input> inputs = List.of(Input.normal(residue, 0.2), Input.normal(volume, 2.5));
      held += p.run(inputs, model, i).symmetric(0.95).holds(32) ? 1 : 0;
    }
    assertTrue(held >= 1861 && held <= 1938, "held " + held);
  }

  @Property(tries = 200)
  void selectionPutsEveryValueWhereSortingWould(
      @ForAll @Size(min = 1, max = 60) List<@IntRange(min = 0, max = 20) Integer> drawn,
      @ForAll @IntRange(min = 0, max = 59) int place) {
    double[] x = drawn.stream().mapToDouble(Integer::doubleValue).toArray();
    double[] sorted = x.clone();
    Arrays.sort(sorted);
    int k = place % x.length;
    assertEquals(sorted[k], Selection.smallest(x, 0, x.length - 1, k));
    for (int i = 0; i < x.length; i++) {
      assertTrue(i <= k ? x[i] <= sorted[k] : x[i] >= sorted[k]);
    }
    double[] same = x.clone();
    Arrays.sort(same);
    assertEquals(Arrays.toString(sorted), Arrays.toString(same));
  }

  @Test
  void selectionOfManyValuesAgreesWithSorting() {
    Random random = new Random(1);
    double[] x = random.doubles(20_000).toArray();
    double[] sorted = x.clone();
    Arrays.sort(sorted);
    for (int k : new int[] {0, 1, 499, 10_000, 19_499, 19_998, 19_999}) {
      double[] copy = x.clone();
      assertEquals(sorted[k], Selection.smallest(copy, 0, copy.length - 1, k));
      Arrays.sort(copy);
      assertTrue(Arrays.equals(sorted, copy));
    }
  }

  @Property(tries = 50)
  void theFirstOrderScalesWithTheUnit(@ForAll @DoubleRange(min = 0.01, max = 1000) double unit) {
    ConcentrationModel model = new ConcentrationModel(1, 1);
    Linear.Result base = Linear.of(List.of(Input.normal(10, 0.3), Input.normal(250, 4)), model);
    Linear.Result scaled =
        Linear.of(List.of(Input.normal(10 * unit, 0.3 * unit), Input.normal(250, 4)), model);
    assertEquals(base.uncertainty() * unit, scaled.uncertainty(), 1e-9 * unit);
  }
}
