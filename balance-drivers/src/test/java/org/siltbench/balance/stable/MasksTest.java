package org.siltbench.balance.stable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class MasksTest {

  private static final int BLOCKS = 40;
  private static final double TRUTH = 11_234;

  private final double[] y = new double[BLOCKS];
  private final double[][] x = new double[BLOCKS][2];

  /** A level of 7, a decay of 3 and a jump of -2 at block 15, in noise of 0.3. */
  private KindFilter filter() {
    KindFilter filter = new KindFilter(Kind.ALL.get(0), 2, new int[] {1});
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < BLOCKS; i++) {
      x[i][0] = Math.exp(-i / 25.0);
      x[i][1] = i < 15 ? 0 : Math.exp((15 - i) / 25.0);
      y[i] = 7 + 3 * x[i][0] - 2 * x[i][1] + 0.3 * random.nextGaussian();
      filter.add(new double[] {1, y[i], 0, 0, x[i][1], x[i][0]}, 0.5, 1);
    }
    return filter;
  }

  private static Projection fit(KindFilter filter) {
    Projection projection = new Projection();
    projection.take(filter, 1e-3, 1, BLOCKS - 3);
    projection.shape(filter, 1);
    projection.mask(filter, 0);
    return projection;
  }

  /** Against the multiple regression of Apache Commons Math 3.6.1, on the same columns. */
  @Test
  void aMaskBesideAShapeIsFittedByOrdinaryLeastSquares() {
    KindFilter filter = filter();
    Projection fit = fit(filter);
    OLSMultipleLinearRegression reference = new OLSMultipleLinearRegression();
    reference.newSampleData(y, x);
    double[] beta = reference.estimateRegressionParameters();
    double[] error = reference.estimateRegressionParametersStandardErrors();
    double variance = reference.estimateErrorVariance();
    assertEquals(beta[0], fit.levelBeside(), 1e-6);
    assertEquals(beta[1], fit.coefficientBeside(), 1e-6);
    assertEquals(beta[2], fit.maskCoefficient(), 1e-6);
    assertEquals(error[0] * error[0], variance * fit.levelVarianceBeside(), 1e-6);
    assertEquals(error[2] * error[2], variance / fit.maskInformation(), 1e-6);
    double left = filter.fixed[1][1] - 40 * fit.level() * fit.level() - fit.explainedByBoth();
    assertEquals(reference.calculateResidualSumOfSquares(), left, 1e-6);
  }

  /** A charge that jumps once in the watch, so that its drift up to then and after cancel. */
  private static DoubleUnaryOperator charged(double at) {
    return t -> TRUTH - (t < at ? 14 : 23) * Math.exp(-t / 70);
  }

  @Test
  void aJumpThatHidesADriftMakesNoWrongMass() {
    for (int seed = 0; seed < 20; seed++) {
      Feed feed = new Feed(StabilitySettings.usual(), seed, 10_000, 10, 2.2);
      feed.untilStable(50, charged(10 + seed));
      if (feed.last instanceof Verdict.Stable s) {
        assertEquals(112.34, s.mass().mass().milligrams(), 0.1, "seed " + seed);
      }
    }
  }

  @Test
  void aJumpIsNoReasonToRefuseWhatCameToRestBeforeAndAfter() {
    Feed feed = Feed.usual(3);
    feed.play(10, t -> TRUTH);
    assertFalse(feed.everStable);
    feed.untilStable(60, t -> TRUTH + 1);
    assertTrue(feed.everStable);
  }
}
