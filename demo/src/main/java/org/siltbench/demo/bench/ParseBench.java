package org.siltbench.demo.bench;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.ToLongFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.format.FormatText;
import org.siltbench.balance.format.LineParser;
import org.siltbench.balance.format.LineReader;
import org.siltbench.balance.format.LineReader.Found;
import org.siltbench.balance.format.Terminator;
import org.siltbench.calc.quantity.Mass;

/**
 * Lines a second of processor time and bytes allocated a line: our reader and format against a
 * plain reading of the same bytes with a regular expression and {@link BigDecimal}, in the same
 * run. Both cut the lines from the same stream and make the same {@link Reading}s. Prints one JSON
 * document.
 */
public final class ParseBench {

  private static final int LINES = 20_000;
  private static final int ROUNDS = 15;
  private static final long ROUND_NANOS = 200_000_000L;

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  /** Keeps the last readings, so that making them cannot be optimised away. */
  private static final @Nullable Reading[] KEPT = new Reading[64];

  private static final String FORMAT =
      """
      siltbench line format 1
      name: bench
      ends: CR LF
      line: mark gap sign blanks number gap unit
      decimals: 5
      unit 'g': g
      mark 'ok': stable
      mark '..': moving
      """;

  private static final Pattern PLAIN =
      Pattern.compile("(ok|\\.\\.)[ \\t]+([+-]?)[ \\t]*([0-9]+\\.[0-9]{5})[ \\t]+(g)");

  private static int next;

  private ParseBench() {}

  /** Runs and prints; {@code --seed N} changes the lines. */
  public static void main(String[] args) {
    long seed = seed(args);
    byte[] stream = stream(seed);
    long expected = plain(stream);
    if (ours(stream) != expected) {
      throw new IllegalStateException("the two readings differ");
    }
    double[] plain = new double[ROUNDS];
    double[] ours = new double[ROUNDS];
    for (int i = -10; i < ROUNDS; i++) {
      double a = linesPerSecond(stream, ParseBench::plain);
      double b = linesPerSecond(stream, ParseBench::ours);
      if (i >= 0) {
        plain[i] = a;
        ours[i] = b;
      }
    }
    System.out.println(document(seed, plain, ours, stream));
  }

  private static long seed(String[] args) {
    int at = Arrays.asList(args).indexOf("--seed");
    return at >= 0 && at + 1 < args.length ? Long.parseLong(args[at + 1]) : 1;
  }

  private static String document(long seed, double[] plain, double[] ours, byte[] stream) {
    double p = median(plain);
    double o = median(ours);
    return String.format(
        Locale.ROOT,
        "{\"bench\":\"parse\",\"seed\":%d,\"lines\":%d,\"rounds\":%d,\"java\":\"%s\","
            + "\"ours\":{\"lines_per_s\":%.0f,\"bytes_per_line\":%.1f},"
            + "\"regex_bigdecimal\":{\"lines_per_s\":%.0f,\"bytes_per_line\":%.1f},"
            + "\"reading_alone\":{\"lines_per_s\":%.0f,\"bytes_per_line\":%.1f},\"times_faster\":%.2f}",
        seed,
        LINES,
        ROUNDS,
        System.getProperty("java.version"),
        o,
        allocated(stream, ParseBench::ours),
        p,
        allocated(stream, ParseBench::plain),
        linesPerSecond(stream, ParseBench::readingAlone),
        allocated(stream, ParseBench::readingAlone),
        o / p);
  }

  private static byte[] stream(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    StringBuilder out = new StringBuilder("rest of a line\r\n");
    for (int i = 0; i < LINES; i++) {
      double grams = random.nextDouble(-1, 120);
      String mark = random.nextInt(3) == 0 ? ".." : "ok";
      out.append(
          String.format(
              Locale.ROOT, "%s %s%11.5f g\r\n", mark, grams < 0 ? "-" : "+", Math.abs(grams)));
    }
    return out.toString().getBytes(ISO_8859_1);
  }

  /** Our way: reader and parser, in chunks as a link hands them over. */
  private static long ours(byte[] stream) {
    LineReader reader = new LineReader(Terminator.CR_LF);
    LineParser parser = FormatText.parse(FORMAT).parser();
    byte[] chunk = new byte[LineReader.MAX_CHUNK];
    Instant at = Instant.EPOCH;
    long sum = 0;
    for (int from = 0; from < stream.length; from += chunk.length) {
      int count = Math.min(chunk.length, stream.length - from);
      System.arraycopy(stream, from, chunk, 0, count);
      reader.accept(chunk, count);
      for (Found f = reader.next(); f != Found.NOTHING; f = reader.next()) {
        if (f == Found.LINE) {
          Reading r = parser.parse(reader.bytes(), reader.start(), reader.end(), from, at);
          sum += value(r);
        }
      }
    }
    return sum;
  }

  private static long value(@Nullable Reading reading) {
    next = (next + 1) % KEPT.length;
    KEPT[next] = reading;
    Mass mass = reading == null ? null : reading.mass();
    return reading == null || mass == null ? 0 : mass.nanograms() + reading.digits().length();
  }

  /** The plain way: a string a line, a regular expression, a BigDecimal. */
  private static long plain(byte[] stream) {
    Instant at = Instant.EPOCH;
    long sum = 0;
    int start = -1;
    for (int i = 1; i < stream.length; i++) {
      if (stream[i] == '\n' && stream[i - 1] == '\r') {
        if (start >= 0) {
          sum += value(plainLine(new String(stream, start, i - 1 - start, ISO_8859_1), i, at));
        }
        start = i + 1;
      }
    }
    return sum;
  }

  private static @Nullable Reading plainLine(String line, long nanos, Instant at) {
    Matcher m = PLAIN.matcher(line);
    if (!m.matches()) {
      return null;
    }
    BigDecimal grams = new BigDecimal(m.group(3));
    BigDecimal signed = m.group(2).equals("-") ? grams.negate() : grams;
    Mass mass = new Mass(signed.movePointRight(9).longValueExact());
    Reading.Mark mark = m.group(1).equals("ok") ? Reading.Mark.STABLE : Reading.Mark.MOVING;
    return new Reading(
        Reading.Kind.MASS, mass, signed.toPlainString(), m.group(4), mark, line, nanos, at);
  }

  /** Only makes readings of the same size: what cannot be saved. */
  private static long readingAlone(byte[] stream) {
    long sum = 0;
    byte[] digits = "12.34567".getBytes(ISO_8859_1);
    for (int i = 0; i < LINES; i++) {
      Reading r =
          new Reading(
              Reading.Kind.MASS,
              new Mass(i),
              new String(digits, ISO_8859_1),
              "g",
              Reading.Mark.STABLE,
              new String(stream, 16 + i * 19, 17, ISO_8859_1),
              i,
              Instant.EPOCH);
      sum += value(r);
    }
    return sum;
  }

  private static double linesPerSecond(byte[] stream, ToLongFunction<byte[]> way) {
    long start = THREADS.getCurrentThreadCpuTime();
    long lines = 0;
    while (THREADS.getCurrentThreadCpuTime() - start < ROUND_NANOS) {
      if (way.applyAsLong(stream) == 0) {
        throw new IllegalStateException("nothing was read");
      }
      lines += LINES;
    }
    return lines * 1e9 / (THREADS.getCurrentThreadCpuTime() - start);
  }

  private static double allocated(byte[] stream, ToLongFunction<byte[]> way) {
    long before = THREADS.getCurrentThreadAllocatedBytes();
    long sum = way.applyAsLong(stream);
    long after = THREADS.getCurrentThreadAllocatedBytes();
    return sum == 0 ? Double.NaN : (double) (after - before) / LINES;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
