package org.siltbench.calc.montecarlo;

import java.util.List;
import org.siltbench.calc.stats.Checked;
import org.siltbench.calc.stats.RunningSummary;

/**
 * The adaptive procedure of JCGM 101:2008 7.9: blocks of trials until mean, standard uncertainty
 * and both ends of the interval have settled.
 *
 * @param mean estimate
 * @param standardUncertainty u
 * @param interval the symmetric interval, the mean of the blocks' ends
 * @param trials how many trials were used in all
 * @param settled false if the greatest number of blocks was reached first
 */
public record Adaptive(
    double mean, double standardUncertainty, Interval interval, long trials, boolean settled) {

  /** Trials in a block, 10 000 (JCGM 101:2008 7.9.4 b). */
  public static final int BLOCK_TRIALS = 10_000;

  /**
   * Runs blocks until twice the standard deviation of the mean of each of the four figures is
   * within δ.
   *
   * @param inputs at least one
   * @param model the model
   * @param probability in (0, 1)
   * @param digits significant digits of u wanted, 1 to 3
   * @param mostBlocks when to give up, at least 2
   * @param seed any number
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Adaptive run(
      List<Input> inputs, Model model, double probability, int digits, int mostBlocks, long seed) {
    Checked.atLeast(mostBlocks, 2, "number of blocks");
    Propagation propagation = new Propagation(BLOCK_TRIALS);
    RunningSummary[] figures = {
      new RunningSummary(), new RunningSummary(), new RunningSummary(), new RunningSummary()
    };
    for (int block = 1; block <= mostBlocks; block++) {
      Outcome outcome = propagation.run(inputs, model, seed + block);
      take(figures, outcome, outcome.symmetric(probability));
      if (block > 1 && settled(figures, digits)) {
        return result(figures, probability, block, true);
      }
    }
    return result(figures, probability, mostBlocks, false);
  }

  private static void take(RunningSummary[] figures, Outcome outcome, Interval interval) {
    figures[0].add(outcome.mean());
    figures[1].add(outcome.standardUncertainty());
    figures[2].add(interval.low());
    figures[3].add(interval.high());
  }

  private static boolean settled(RunningSummary[] figures, int digits) {
    double u = figures[1].summary().mean();
    double tolerance = u > 0 ? Comparison.tolerance(u, digits) : 0;
    for (RunningSummary figure : figures) {
      if (2 * figure.summary().deviationOfMean() > tolerance) {
        return false;
      }
    }
    return true;
  }

  private static Adaptive result(
      RunningSummary[] figures, double probability, int blocks, boolean settled) {
    return new Adaptive(
        figures[0].summary().mean(),
        figures[1].summary().mean(),
        new Interval(figures[2].summary().mean(), figures[3].summary().mean(), probability),
        (long) blocks * BLOCK_TRIALS,
        settled);
  }
}
