package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.air.Buoyancy;
import org.siltbench.calc.detection.MethodDetectionLimit;
import org.siltbench.calc.stats.CoverageFactors;
import org.siltbench.calc.stats.Quantiles;

/** Values that nobody printed for us: from another library, or from another way to the same. */
final class IndependentValuesTest {

  /** commons-math3 3.6.1 beside the quantile and its fast series. */
  @Test
  void coverage_factors_agree_with_another_library_at_every_whole_nu() {
    for (double probability : new double[] {0.95, 0.99}) {
      CoverageFactors fast = CoverageFactors.of(probability);
      for (int nu = 1; nu <= 60; nu++) {
        double k = new TDistribution(nu).inverseCumulativeProbability((1 + probability) / 2);
        assertEquals(k, Quantiles.coverageFactor(probability, nu), 1e-7 * k);
        assertEquals(k, fast.at(nu), 1e-7 * k);
      }
    }
  }

  /** commons-math3 3.6.1; results 0, 1, 0, 1 … have a deviation known by hand. */
  @Test
  void detection_limits_agree_with_another_library() {
    for (int n = 7; n <= 16; n++) {
      double[] x = new double[n];
      for (int i = 0; i < n; i++) {
        x[i] = i % 2;
      }
      double ones = n / 2;
      double s = Math.sqrt((ones - ones * ones / n) / (n - 1));
      double t = new TDistribution(n - 1).inverseCumulativeProbability(0.99);
      ChiSquaredDistribution chi = new ChiSquaredDistribution(n - 1);
      MethodDetectionLimit limit = MethodDetectionLimit.ofSpikes(x);
      assertEquals(t * s, limit.limit(), 1e-7);
      double[] interval = limit.confidenceInterval();
      double low = Math.sqrt((n - 1) / chi.inverseCumulativeProbability(0.975));
      double high = Math.sqrt((n - 1) / chi.inverseCumulativeProbability(0.025));
      assertEquals(low * t * s, interval[0], 1e-6);
      assertEquals(high * t * s, interval[1], 1e-6);
    }
  }

  /**
   * A balance adjusted with weights of 8000 kg/m³ shows R where the sample's weight less its lift
   * is that of R of those weights: (m − ρa·m/ρ)·g = (R − ρa·R/8000)·g.
   */
  @Test
  void a_reading_balances_the_forces() {
    double g = 9.81;
    for (double air : new double[] {0.95, 1.1, 1.2, 1.25}) {
      for (double density : new double[] {1100, 2400, 2650}) {
        double m = Buoyancy.massFromReading(0.12345, air, density);
        double weightOfSample = (m - air * m / density) * g;
        double weightOfWeights = (0.12345 - air * 0.12345 / 8000) * g;
        assertEquals(weightOfWeights, weightOfSample, 1e-15);
      }
    }
  }

  /**
   * ∂C/∂x by moving each input by its own u; C in mg/L from g and mL as they stand in the table.
   */
  @Test
  void the_first_order_agrees_with_differences_of_the_formula() {
    double[][] cases = {
      {0.11234, 0.12891, 500, 3}, {0.1, 0.1031, 87, 1.5}, {0.12, 0.1188, 250, 2}, {0.1, 0.3, 40, 1}
    };
    for (double[] x : cases) {
      double post = 1e6 * (x[1] + 1e-4 - x[0]) / x[2] - 1e6 * (x[1] - 1e-4 - x[0]) / x[2];
      double step = x[3] * 1e-3;
      double volume = 1e6 * (x[1] - x[0]) / (x[2] + step) - 1e6 * (x[1] - x[0]) / (x[2] - step);
      double expected = Math.sqrt(2 * post * post / 4 + volume * volume * 1e6 / 4);
      String row = String.format(Locale.ROOT, "F,sample,%.5f,%.5f,%.0f,%s", x[0], x[1], x[2], x[3]);
      Concentration c =
          Tables.calculate(Tables.plain(), "filter,role,pre_g,post_g,volume_ml,volume_u_ml", row)
              .concentration("F");
      assertEquals(expected, c.u(), 1e-6 * expected);
    }
  }
}
