package org.siltbench.calc.montecarlo;

import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.siltbench.calc.stats.Checked;

/**
 * Propagation of distributions by Monte Carlo, JCGM 101:2008 clause 7, with a seeded generator and
 * a stated number of trials: the same seed, inputs and trials give the same figures on every
 * machine.
 *
 * <p>Keeps its buffers from run to run: 8 bytes a trial and 2 KiB an input; no other memory grows
 * with use. Not thread-safe: one per thread.
 */
public final class Propagation {

  /** Number of trials used where nothing else is asked for. */
  public static final int USUAL_TRIALS = 100_000;

  /** The fewest trials accepted: below it the ends of a 95 % interval mean little. */
  public static final int FEWEST_TRIALS = 1_000;

  /** The most trials accepted, 80 MB of memory. */
  public static final int MOST_TRIALS = 10_000_000;

  private static final int BLOCK = 256;

  private final double[] outputs;
  private double[][] columns = new double[0][];

  /**
   * A propagation of so many trials.
   *
   * @param trials from 1 000 to 10 000 000
   * @throws IllegalArgumentException if out of range
   */
  public Propagation(int trials) {
    Checked.within(trials, FEWEST_TRIALS, MOST_TRIALS, "number of trials");
    this.outputs = new double[trials];
  }

  /** The number of trials of each run. */
  int trials() {
    return outputs.length;
  }

  /**
   * Draws every input {@link #trials()} times, independently, and evaluates the model.
   *
   * @param inputs at least one
   * @param model the model
   * @param seed any number; state it beside the result
   * @return the outcome, which borrows this object's buffer: valid until the next run
   * @throws IllegalArgumentException if there is no input, or the model gives a value that is not
   *     finite (as for a volume whose distribution reaches zero)
   */
  public Outcome run(List<Input> inputs, Model model, long seed) {
    Checked.atLeast(inputs.size(), 1, "number of inputs");
    reserve(inputs.size());
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    Draws draws = new Draws(random);
    Outcome.Moments moments = new Outcome.Moments();
    for (int from = 0; from < outputs.length; from += BLOCK) {
      int count = Math.min(BLOCK, outputs.length - from);
      for (int j = 0; j < inputs.size(); j++) {
        draws.fill(columns[j], count, inputs.get(j));
      }
      model.evaluate(columns, outputs, from, count);
      moments.add(outputs, from, count);
    }
    return new Outcome(outputs, moments, seed);
  }

  /** Exactly one column per input; those there are kept. */
  private void reserve(int inputs) {
    if (columns.length != inputs) {
      int kept = Math.min(columns.length, inputs);
      double[][] next = new double[inputs][];
      System.arraycopy(columns, 0, next, 0, kept);
      for (int j = kept; j < inputs; j++) {
        next[j] = new double[BLOCK];
      }
      columns = next;
    }
  }
}
