package org.siltbench.demo.bench.stability;

import java.util.Arrays;
import org.siltbench.demo.ExactShare;

/** Counts what one watcher made of many placements. */
final class Tally {

  private static final double TAIL = 0.05;

  private long placements;
  private long undetectable;
  private long undetectableWrong;
  private long wrong;
  private long narrow;
  private long narrowWrong;
  private long strict;
  private long strictWrong;
  private long late;
  private long lateRefused;
  private long missed;
  private final Samples ratio = new Samples();
  private final Samples excess = new Samples();
  private final Samples excessReadings = new Samples();
  private final Samples time = new Samples();

  void add(Stream stream, Outcome outcome) {
    placements++;
    boolean wrongNow = outcome.isRecorded() && stream.wrong(outcome.recorded());
    narrow += stream.hidden().whileWrong() ? 0 : 1;
    narrowWrong += wrongNow && !stream.hidden().whileWrong() ? 1 : 0;
    strict += stream.hidden().fromTheStart() ? 0 : 1;
    strictWrong += wrongNow && !stream.hidden().fromTheStart() ? 1 : 0;
    if (stream.undetectable()) {
      undetectable++;
      undetectableWrong += wrongNow ? 1 : 0;
      return;
    }
    wrong += wrongNow ? 1 : 0;
    if (stream.refusalRight()) {
      late++;
      lateRefused += outcome.isRecorded() ? 0 : 1;
      return;
    }
    missed += outcome.isRecorded() ? 0 : 1;
    double oracle = Math.max(stream.oracle(), 0.05);
    ratio.add(outcome.provisionalAt() / oracle);
    excess.add(outcome.recordedAt() - stream.oracle());
    time.add(outcome.recordedAt());
    double rate = stream.placement().output().rate();
    excessReadings.add((outcome.recordedAt() - stream.oracle()) * rate);
  }

  void add(Tally other) {
    placements += other.placements;
    undetectable += other.undetectable;
    undetectableWrong += other.undetectableWrong;
    wrong += other.wrong;
    narrow += other.narrow;
    narrowWrong += other.narrowWrong;
    strict += other.strict;
    strictWrong += other.strictWrong;
    late += other.late;
    lateRefused += other.lateRefused;
    missed += other.missed;
    ratio.add(other.ratio);
    excess.add(other.excess);
    excessReadings.add(other.excessReadings);
    time.add(other.time);
  }

  /** The figures of one watcher on one group of placements. */
  record Figures(
      long placements,
      long detectable,
      long wrong,
      double wrongPer100k,
      double wrongPer100kLow,
      double wrongPer100kHigh,
      long undetectable,
      double undetectableShare,
      double undetectableWrongShare,
      long seenWhileWrong,
      long seenWhileWrongWrong,
      long seenAtFirst,
      long seenAtFirstWrong,
      long oracleLate,
      long oracleLateRefused,
      long refused,
      double refusedShare,
      double ratioMedian,
      double ratioP95,
      double timeMedian,
      double excessMedian,
      double excessP95,
      double excessReadingsMedian,
      double excessReadingsP95) {}

  Figures figures() {
    long detectable = placements - undetectable;
    double per = 1e5 / Math.max(1, detectable);
    return new Figures(
        placements,
        detectable,
        wrong,
        wrong * per,
        1e5 * low(wrong, detectable),
        1e5 * high(wrong, detectable),
        undetectable,
        undetectable / (double) Math.max(1, placements),
        undetectableWrong / (double) Math.max(1, undetectable),
        narrow,
        narrowWrong,
        strict,
        strictWrong,
        late,
        lateRefused,
        missed,
        missed / (double) Math.max(1, detectable - late),
        ratio.quantile(0.5),
        ratio.quantile(0.95),
        time.quantile(0.5),
        excess.quantile(0.5),
        excess.quantile(0.95),
        excessReadings.quantile(0.5),
        excessReadings.quantile(0.95));
  }

  /** Clopper and Pearson, one-sided, 95 %. */
  static double high(long x, long n) {
    return ExactShare.high(x, n, TAIL);
  }

  static double low(long x, long n) {
    return ExactShare.low(x, n, TAIL);
  }

  /** Numbers kept for their quantiles. */
  private static final class Samples {
    private float[] values = new float[64];
    private int size;

    void add(double value) {
      if (size == values.length) {
        values = Arrays.copyOf(values, 2 * size);
      }
      values[size++] = (float) value;
    }

    void add(Samples other) {
      for (int i = 0; i < other.size; i++) {
        add(other.values[i]);
      }
    }

    double quantile(double q) {
      if (size == 0) {
        return Double.NaN;
      }
      float[] sorted = Arrays.copyOf(values, size);
      Arrays.sort(sorted);
      return sorted[(int) Math.min(size - 1L, Math.round(q * (size - 1)))];
    }
  }
}
