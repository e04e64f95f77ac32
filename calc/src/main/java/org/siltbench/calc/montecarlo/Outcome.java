package org.siltbench.calc.montecarlo;

import java.util.Arrays;
import org.siltbench.calc.stats.Checked;

/**
 * What a propagation gave: estimate, standard uncertainty and coverage intervals of the output.
 * Borrows the buffer of the {@link Propagation} that made it; ask before the next run. Not
 * thread-safe.
 */
public final class Outcome {

  private final double[] outputs;
  private final Moments moments;
  private final long seed;
  private boolean sorted;

  Outcome(double[] outputs, Moments moments, long seed) {
    this.outputs = outputs;
    this.moments = moments;
    this.seed = seed;
    Checked.finite(moments.mean(), "mean of the trials");
    Checked.finite(moments.squares, "variance of the trials");
  }

  /** The estimate: the mean of the trials (JCGM 101:2008 7.6). */
  public double mean() {
    return moments.mean();
  }

  /** The standard uncertainty: the standard deviation of the trials (JCGM 101:2008 7.6). */
  public double standardUncertainty() {
    return moments.deviation();
  }

  /** How many trials. */
  int trials() {
    return outputs.length;
  }

  /** The seed that repeats this run. */
  long seed() {
    return seed;
  }

  /**
   * The probabilistically symmetric coverage interval: equal shares outside at both ends. With q =
   * round(p·M) and r = round((M − q)/2), the r-th to the (r + q)-th smallest value. Source: JCGM
   * 101:2008 7.7.2.
   *
   * @param probability in (0, 1), with at least one trial left outside at each end
   * @throws IllegalArgumentException if the probability leaves no trial outside
   */
  public Interval symmetric(double probability) {
    int q = inside(probability);
    int r = (outputs.length - q + 1) / 2;
    if (sorted) {
      return new Interval(outputs[r - 1], outputs[r + q - 1], probability);
    }
    double low = Selection.smallest(outputs, 0, outputs.length - 1, r - 1);
    double high = Selection.smallest(outputs, r, outputs.length - 1, r + q - 1);
    return new Interval(low, high, probability);
  }

  /**
   * The shortest coverage interval: the least y(r + q) − y(r) over r. Source: JCGM 101:2008 7.7.4.
   * Of equally short ones the lowest.
   *
   * @param probability in (0, 1), with at least one trial left outside at each end
   * @throws IllegalArgumentException if the probability leaves no trial outside
   */
  public Interval shortest(double probability) {
    int q = inside(probability);
    sort();
    int best = 0;
    for (int r = 1; r + q < outputs.length; r++) {
      if (outputs[r + q] - outputs[r] < outputs[best + q] - outputs[best]) {
        best = r;
      }
    }
    return new Interval(outputs[best], outputs[best + q], probability);
  }

  /**
   * The value that a share p of the trials does not exceed: the ⌈p·M⌉-th smallest.
   *
   * @param p in (0, 1)
   * @throws IllegalArgumentException if p is out of range
   */
  public double quantile(double p) {
    int place = (int) Math.ceil(Checked.probability(p, "p") * outputs.length) - 1;
    return sorted ? outputs[place] : Selection.smallest(outputs, 0, outputs.length - 1, place);
  }

  private int inside(double probability) {
    int q = (int) Math.round(Checked.probability(probability, "probability") * outputs.length);
    if (q < 1 || outputs.length - q < 2) {
      throw new IllegalArgumentException(
          outputs.length + " trials are too few for a probability of " + probability);
    }
    return q;
  }

  private void sort() {
    if (!sorted) {
      Arrays.sort(outputs);
      sorted = true;
    }
  }

  /** Sums about the first value, so that a small spread on a large value is not lost. */
  static final class Moments {
    private long n;
    private double shift;
    private double sum;
    private double squares;

    void add(double[] values, int from, int count) {
      if (n == 0) {
        shift = values[from];
      }
      double s = 0;
      double ss = 0;
      for (int i = from; i < from + count; i++) {
        double d = values[i] - shift;
        s += d;
        ss += d * d;
      }
      n += count;
      sum += s;
      squares += ss;
    }

    double mean() {
      return shift + sum / n;
    }

    double deviation() {
      return Math.sqrt(Math.max(0, squares - sum * sum / n) / (n - 1));
    }
  }
}
