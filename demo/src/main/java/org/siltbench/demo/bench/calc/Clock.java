package org.siltbench.demo.bench.calc;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.function.LongToDoubleFunction;

/**
 * Times actions turn by turn by the processor time of this thread, so that all see the same machine
 * and a busy one does not spoil the comparison.
 */
final class Clock {

  private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();

  private double kept;

  /**
   * Processor seconds per call of each action: the median of the rounds, after as many rounds to
   * warm up.
   *
   * @param rounds how many rounds count
   * @param actions given the number of the round
   */
  double[] seconds(int rounds, LongToDoubleFunction... actions) {
    double[][] times = new double[actions.length][rounds];
    for (int round = -rounds; round < rounds; round++) {
      for (int a = 0; a < actions.length; a++) {
        long begin = CPU.getCurrentThreadCpuTime();
        kept += actions[a].applyAsDouble(round);
        double took = (CPU.getCurrentThreadCpuTime() - begin) / 1e9;
        if (round >= 0) {
          times[a][round] = took;
        }
      }
    }
    return Arrays.stream(times).mapToDouble(Clock::median).toArray();
  }

  private static double median(double[] times) {
    Arrays.sort(times);
    return times[times.length / 2];
  }

  /** Everything computed, so that nothing is optimised away. */
  double kept() {
    return kept;
  }
}
