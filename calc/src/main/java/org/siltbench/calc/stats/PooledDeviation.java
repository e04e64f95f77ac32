package org.siltbench.calc.stats;

import java.util.List;

/**
 * One standard deviation from several groups that share their spread but not their mean: the
 * repeatability of a balance from re-weighings of different filters.
 *
 * @param deviation pooled standard deviation, in the unit of the values
 * @param degreesOfFreedom Σ(nᵢ − 1)
 */
public record PooledDeviation(double deviation, long degreesOfFreedom) {

  /**
   * s² = Σ(nᵢ − 1)sᵢ² / Σ(nᵢ − 1).
   *
   * <p>Groups of one value add nothing. Source: GUM (JCGM 100:2008) H.5.2.3 note; H.3.6.
   *
   * @param groups at least one group with two or more finite values of one unit
   * @throws IllegalArgumentException if no group has two values, or a value is not finite
   */
  public static PooledDeviation of(List<double[]> groups) {
    CompensatedSum squares = new CompensatedSum();
    long freedom = 0;
    for (double[] group : groups) {
      Summary s = Summary.of(group);
      if (s.n() > 1) {
        squares.add(s.degreesOfFreedom() * s.deviation() * s.deviation());
        freedom += s.degreesOfFreedom();
      }
    }
    if (freedom == 0) {
      throw new IllegalArgumentException("no group has two values: no deviation can be pooled");
    }
    return new PooledDeviation(Math.sqrt(squares.value() / freedom), freedom);
  }
}
