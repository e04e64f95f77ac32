package org.siltbench.calc.blank;

import java.util.List;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.stats.Checked;

/**
 * The blank-loss test of a lot: filters washed and dried once more, and what they lost.
 *
 * @param meanMgPerCm2 the mean loss in mg/cm²; negative where the filters gained
 * @param worstMgPerCm2 the largest single loss
 * @param filters how many were tested
 */
public record LotLoss(double meanMgPerCm2, double worstMgPerCm2, int filters) {

  /**
   * Losses over the filters' area: loss/area.
   *
   * @param losses mass before less mass after, one for each filter, at least one
   * @param areaCm2 the area of one filter in cm², above zero (ISO 11923 takes the whole filter)
   * @throws IllegalArgumentException if there is no loss or the area is not above zero
   */
  public static LotLoss of(List<Mass> losses, double areaCm2) {
    Checked.atLeast(losses.size(), 1, "number of filters");
    Checked.positive(areaCm2, "area in cm2");
    Mass sum = losses.stream().reduce(Mass.ZERO, Mass::plus);
    Mass worst = losses.stream().max(Mass::compareTo).orElseThrow();
    return new LotLoss(
        sum.milligrams() / losses.size() / areaCm2, worst.milligrams() / areaCm2, losses.size());
  }

  /**
   * True when every filter stays below the limit (strictly: the standard says "less than").
   *
   * @param limitMgPerCm2 0.017 in ISO 11923
   */
  public boolean passes(double limitMgPerCm2) {
    return worstMgPerCm2 < limitMgPerCm2;
  }
}
