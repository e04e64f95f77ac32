package org.siltbench.calc.stats;

/**
 * Mean and standard deviation of a stream in constant memory: Welford's recurrence, with merging of
 * two streams.
 *
 * <p>m ← m + (x − m)/n; M2 ← M2 + (x − m_old)(x − m_new). Sources: B. P. Welford, Technometrics 4
 * (1962) 419-420; merging: Chan, Golub, LeVeque (1983). Ten million values need the same few bytes
 * as ten. Not thread-safe.
 */
public final class RunningSummary {

  private long n;
  private double mean;
  private double squares;
  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  /**
   * Takes one value in.
   *
   * @throws IllegalArgumentException if it is NaN or infinite; what was taken before is unchanged
   */
  public void add(double value) {
    Checked.finite(value, "value");
    n++;
    double d = value - mean;
    mean += d / n;
    squares += d * (value - mean);
    low = Math.min(low, value);
    high = Math.max(high, value);
  }

  /** Takes in all that another stream took; the other is unchanged. */
  void merge(RunningSummary other) {
    if (other.n == 0) {
      return;
    }
    double total = (double) n + other.n;
    double d = other.mean - mean;
    squares += other.squares + d * d * (n * (double) other.n / total);
    mean += d * (other.n / total);
    n += other.n;
    low = Math.min(low, other.low);
    high = Math.max(high, other.high);
  }

  /** Number of values taken. */
  public long count() {
    return n;
  }

  /**
   * The summary so far.
   *
   * @throws IllegalStateException if no value was taken
   */
  public Summary summary() {
    requireSome();
    return new Summary(n, mean, n < 2 ? Double.NaN : Math.sqrt(squares / (n - 1)));
  }

  /**
   * The smallest value taken.
   *
   * @throws IllegalStateException if no value was taken
   */
  double low() {
    requireSome();
    return low;
  }

  /**
   * The largest value taken.
   *
   * @throws IllegalStateException if no value was taken
   */
  double high() {
    requireSome();
    return high;
  }

  private void requireSome() {
    if (n == 0) {
      throw new IllegalStateException("no value was taken yet");
    }
  }
}
