package org.siltbench.demo.bench.calc;

import java.util.List;
import org.siltbench.calc.method.UncertaintyInputs;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;
import org.siltbench.calc.result.BalanceRecord;
import org.siltbench.calc.result.InputRow;
import org.siltbench.calc.stats.CoverageFactors;

/** What a person would write by hand: the first-order budget of each row, nothing else. */
final class PlainFirstOrder {

  private static final int PARTS = 10;
  private static final CoverageFactors FACTORS = CoverageFactors.of(0.95);

  private final double[] preMg;
  private final double[] postMg;
  private final double[] litres;

  PlainFirstOrder(List<InputRow> rows) {
    preMg = new double[rows.size()];
    postMg = new double[rows.size()];
    litres = new double[rows.size()];
    for (int i = 0; i < rows.size(); i++) {
      InputRow row = rows.get(i);
      Mass pre = row.pre();
      Volume volume = row.volume();
      preMg[i] = pre == null ? 0 : pre.milligrams();
      postMg[i] = row.posts().get(0).milligrams();
      litres[i] = volume == null ? 1 : volume.litres();
    }
  }

  /** Value, combined uncertainty, degrees of freedom, U and each share; adds them all up. */
  double run(UncertaintyInputs in, BalanceRecord b) {
    double keep = 0;
    double d = Rows.STEP.milligrams();
    double[] parts = new double[PARTS];
    for (int i = 0; i < preMg.length; i++) {
      double v = litres[i];
      double net = postMg[i] - preMg[i];
      double c = net / v;
      parts[0] = b.repeatabilityMg() * Math.sqrt(2) / v;
      parts[1] = d / Math.sqrt(6) / v;
      parts[2] = b.linearityMg() / Math.sqrt(3) * Math.sqrt(2) / v;
      parts[3] = b.eccentricityMg() / Math.sqrt(3) * Math.sqrt(2) / v;
      parts[4] = b.spanRelative() * net / v;
      parts[5] = b.driftRelative() * postMg[i] / v;
      parts[6] = b.airDensityChange() * (1 / b.filterDensity() - 1 / 8000.0) * postMg[i] / v;
      parts[7] = in.moistureMg() * Math.sqrt(2) / v;
      parts[8] = -c / v * Rows.VOLUME_U / 1000;
      parts[9] = in.subsamplingPct() / 100 * Math.abs(c);
      double variance = 0;
      for (double part : parts) {
        variance += part * part;
      }
      double dof = variance * variance / (Math.pow(parts[0], 4) / b.repeatabilityDof());
      keep += c + FACTORS.at(dof) * Math.sqrt(variance) + dof;
      for (double part : parts) {
        keep += part * part / variance;
      }
    }
    return keep;
  }
}
