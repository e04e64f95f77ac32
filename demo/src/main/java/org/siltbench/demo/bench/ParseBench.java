package org.siltbench.demo.bench;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.ToLongFunction;
import org.siltbench.demo.bench.parse.OurWay;
import org.siltbench.demo.bench.parse.PlainWay;
import org.siltbench.demo.bench.parse.Stream;

/**
 * Lines a second of processor time and bytes allocated a line: our reader and format against a
 * plain reading of the same bytes with a regular expression and {@code BigDecimal}, in the same
 * run. Both cut the lines from the same stream; before anything is timed, all that they say of
 * every line is compared. Ours makes texts only when they are asked for, so it is timed twice: mass
 * and mark taken, and the digits and the raw line asked for as well. Prints one JSON document.
 */
public final class ParseBench {

  private static final int ROUNDS = 15;
  private static final int WARM_UP = 10;
  private static final long ROUND_NANOS = 200_000_000L;

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private ParseBench() {}

  /** Runs and prints; {@code --seed N} changes the lines. */
  public static void main(String[] args) {
    long seed = seed(args);
    Stream stream = Stream.of(seed);
    if (!OurWay.told(stream).equals(PlainWay.told(stream))) {
      throw new IllegalStateException("The two readings differ.");
    }
    double[] plain = new double[ROUNDS];
    double[] ours = new double[ROUNDS];
    double[] texts = new double[ROUNDS];
    for (int i = -WARM_UP; i < ROUNDS; i++) {
      int at = Math.max(i, 0); // what the warm-up measures is written over
      plain[at] = linesPerSecond(stream, PlainWay::sum);
      ours[at] = linesPerSecond(stream, OurWay::sum);
      texts[at] = linesPerSecond(stream, OurWay::sumWithTexts);
    }
    System.out.println(document(seed, stream, median(plain), median(ours), median(texts)));
  }

  private static long seed(String[] args) {
    int at = Arrays.asList(args).indexOf("--seed");
    return at >= 0 && at + 1 < args.length ? Long.parseLong(args[at + 1]) : 1;
  }

  private static String document(
      long seed, Stream stream, double plain, double ours, double texts) {
    return String.format(
        Locale.ROOT,
        "{\"bench\":\"parse\",\"seed\":%d,\"lines\":%d,\"rounds\":%d,\"java\":\"%s\","
            + "\"ours\":%s,\"ours_memory\":%s,\"ours_texts_asked_for\":%s,\"regex_bigdecimal\":%s,"
            + "\"reading_alone\":%s,\"times_faster\":%.2f,\"times_faster_with_texts\":%.2f}",
        seed,
        stream.lines(),
        ROUNDS,
        System.getProperty("java.version"),
        figures(stream, ours, OurWay::sum),
        memory(OurWay.memory(stream, THREADS::getCurrentThreadAllocatedBytes)),
        figures(stream, texts, OurWay::sumWithTexts),
        figures(stream, plain, PlainWay::sum),
        figures(stream, linesPerSecond(stream, OurWay::alone), OurWay::alone),
        ours / plain,
        texts / plain);
  }

  private static String memory(OurWay.Memory memory) {
    return String.format(
        Locale.ROOT,
        "{\"reading\":%.1f,\"share_of_block\":%.1f,\"beyond\":%.1f,\"line\":%.1f}",
        memory.reading(),
        memory.block(),
        Math.abs(memory.beyond()) < 0.05 ? 0 : memory.beyond(),
        memory.line());
  }

  private static String figures(Stream stream, double rate, ToLongFunction<Stream> way) {
    return String.format(
        Locale.ROOT,
        "{\"lines_per_s\":%.0f,\"bytes_per_line\":%.1f}",
        rate,
        allocated(stream, way));
  }

  private static double linesPerSecond(Stream stream, ToLongFunction<Stream> way) {
    long start = THREADS.getCurrentThreadCpuTime();
    long lines = 0;
    while (THREADS.getCurrentThreadCpuTime() - start < ROUND_NANOS) {
      if (way.applyAsLong(stream) == 0) {
        throw new IllegalStateException("Nothing was read.");
      }
      lines += stream.lines();
    }
    return lines * 1e9 / (THREADS.getCurrentThreadCpuTime() - start);
  }

  private static double allocated(Stream stream, ToLongFunction<Stream> way) {
    long before = THREADS.getCurrentThreadAllocatedBytes();
    long sum = way.applyAsLong(stream);
    long after = THREADS.getCurrentThreadAllocatedBytes();
    return sum == 0 ? Double.NaN : (double) (after - before) / stream.lines();
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
