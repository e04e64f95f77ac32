package org.siltbench.calc.duplicates;

import java.util.List;
import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.CompensatedSum;

/**
 * Two results of what should be the same thing.
 *
 * @param first any unit, signed
 * @param second same unit
 */
public record DuplicatePair(double first, double second) {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is not finite
   */
  public DuplicatePair {
    Checked.finite(first, "first result");
    Checked.finite(second, "second result");
  }

  /** The mean of the two. */
  public double mean() {
    return first + (second - first) / 2;
  }

  /** The difference without sign. */
  public double difference() {
    return Math.abs(first - second);
  }

  /**
   * Relative percent difference, |a − b|/|mean|·100. Source: SM 2020 B (duplicates), common to the
   * trade.
   *
   * @return percent; 0 for two equal results, zero included; infinite for unequal results whose
   *     mean is 0
   */
  public double relativePercentDifference() {
    return difference() == 0 ? 0 : difference() / Math.abs(mean()) * 100;
  }

  /**
   * The standard deviation of a single result from pairs: s_dup = √(Σd²/2n), n degrees of freedom.
   *
   * @param pairs at least one, of similar size
   * @return in the unit of the results
   * @throws IllegalArgumentException if there is none
   */
  public static double deviation(List<DuplicatePair> pairs) {
    Checked.atLeast(pairs.size(), 1, "number of pairs");
    CompensatedSum squares = new CompensatedSum();
    for (DuplicatePair pair : pairs) {
      squares.add(pair.difference() * pair.difference());
    }
    return Math.sqrt(squares.value() / (2.0 * pairs.size()));
  }
}
