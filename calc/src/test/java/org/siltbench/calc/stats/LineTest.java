package org.siltbench.calc.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

final class LineTest {

  private static final double[] T = {
    21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
  };
  private static final double[] B = {
    -.171, -.169, -.166, -.159, -.164, -.165, -.156, -.157, -.159, -.161, -.160
  };

  /** GUM (JCGM 100:2008) H.3, data from memory (check values A5). */
  @Test
  void thermometerCalibrationOfTheGum() {
    Line line = Line.fit(T, B, 20);
    assertEquals(-0.17120, line.intercept(), 5e-6);
    assertEquals(0.00288, line.interceptUncertainty(), 5e-6);
    assertEquals(0.0021827, line.slope(), 1e-6);
    assertEquals(0.000668, line.slopeUncertainty(), 5e-7);
    assertEquals(-0.9304, line.correlation(), 5e-5);
    assertEquals(0.003498, line.residualDeviation(), 5e-7);
    assertEquals(-0.14938, line.at(30), 5e-6);
    assertEquals(0.00414, line.uncertaintyAt(30), 5e-6);
    assertEquals(9, line.degreesOfFreedom());
  }

  /** GUM H.3.4 by its other formula: u² = u1² + t²u2² + 2 t u1 u2 r. */
  @Test
  void uncertaintyAtAPointIsThatOfTheCorrelatedCoefficients() {
    Line line = Line.fit(T, B, 20);
    double u1 = line.interceptUncertainty();
    double u2 = 10 * line.slopeUncertainty();
    double u = Math.sqrt(u1 * u1 + u2 * u2 + 2 * u1 * u2 * line.correlation());
    assertEquals(u, line.uncertaintyAt(30), 1e-12);
    double s = line.residualDeviation();
    assertEquals(Math.sqrt(s * s + u * u), line.predictionDeviationAt(30), 1e-12);
  }

  @Property(tries = 100)
  void agreesWithCommonsMath(@ForAll @DoubleRange(min = -5, max = 5) double bend) {
    SimpleRegression reference = new SimpleRegression();
    double[] y = new double[T.length];
    for (int i = 0; i < T.length; i++) {
      y[i] = 3 + 0.5 * T[i] + bend * Math.sin(7 * T[i]);
      reference.addData(T[i], y[i]);
    }
    Line line = Line.fit(T, y, 0);
    assertEquals(reference.getSlope(), line.slope(), 1e-9);
    assertEquals(reference.getIntercept(), line.intercept(), 1e-8);
    assertEquals(Math.sqrt(reference.getMeanSquareError()), line.residualDeviation(), 1e-7);
    assertEquals(reference.getSlopeStdErr(), line.slopeUncertainty(), 1e-7);
    assertEquals(reference.getInterceptStdErr(), line.interceptUncertainty(), 1e-6);
  }

  @Test
  void nonsenseIsRefused() {
    double[] three = {1, 2, 3};
    assertThrows(IllegalArgumentException.class, () -> Line.fit(new double[] {1, 2}, three, 0));
    assertThrows(
        IllegalArgumentException.class, () -> Line.fit(new double[] {1, 2, 3, 4}, three, 0));
    assertThrows(IllegalArgumentException.class, () -> Line.fit(new double[] {2, 2, 2}, three, 0));
    assertThrows(IllegalArgumentException.class, () -> Line.fit(three, three, Double.NaN));
    assertThrows(
        IllegalArgumentException.class,
        () -> Line.fit(three, new double[] {1, Double.POSITIVE_INFINITY, 2}, 0));
  }

  @Test
  void pointsOnALineLeaveNoResidual() {
    Line line = Line.fit(new double[] {1, 2, 4}, new double[] {3, 5, 9}, 0);
    assertEquals(2, line.slope(), 1e-15);
    assertEquals(1, line.intercept(), 1e-14);
    assertEquals(0, line.residualDeviation(), 1e-14);
  }
}
