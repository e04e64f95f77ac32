package org.siltbench.calc.montecarlo;

/** A measurement model with one output, evaluated for a block of trials at a time. */
@FunctionalInterface
public interface Model {

  /**
   * Writes the output of {@code count} trials.
   *
   * <p>Plain loops over the columns are fast; nothing needs to be allocated.
   *
   * @param inputs one column per input, in the order given; each holds at least {@code count}
   *     trials; not to be changed or kept
   * @param outputs where to write
   * @param from the first place to write
   * @param count how many trials
   */
  void evaluate(double[][] inputs, double[] outputs, int from, int count);
}
