package org.siltbench.demo.bench.parse;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.calc.quantity.Mass;

/** The plain way: a string a line, a regular expression, a {@link BigDecimal}, a record. */
public final class PlainWay {

  private static final Pattern LINE =
      Pattern.compile("(ok|\\.\\.)[ \\t]+([+-]?)[ \\t]*([0-9]+\\.[0-9]{5})[ \\t]+(g)");

  /** The same facts as a {@link Reading} has, as a plain program would keep them. */
  private record Read(
      Mass mass,
      String digits,
      String unit,
      Reading.Mark mark,
      String raw,
      long nanos,
      Instant at) {}

  private final byte[] bytes;
  private int start;

  private PlainWay(Stream stream) {
    bytes = stream.bytes();
    start = end(0) + 2; // what comes before the first line end is no line
  }

  /** Reads all lines and adds up what they say, so that nothing can be left out. */
  public static long sum(Stream stream) {
    PlainWay way = new PlainWay(stream);
    long sum = 0;
    for (Read r = way.next(); r != null; r = way.next()) {
      sum += Kept.keep(r, r.mass().nanograms() + r.mark().name().length());
    }
    return sum;
  }

  /** All that is said of every line. */
  public static List<List<Object>> told(Stream stream) {
    PlainWay way = new PlainWay(stream);
    List<List<Object>> out = new ArrayList<>();
    for (Read r = way.next(); r != null; r = way.next()) {
      out.add(List.of(r.mass(), r.digits(), r.unit(), r.mark(), r.raw()));
    }
    return out;
  }

  /** The next line's reading; null at the end. */
  private @Nullable Read next() {
    int end = end(start);
    if (end < 0) {
      return null;
    }
    String line = new String(bytes, start, end - start, ISO_8859_1);
    start = end + 2;
    return read(line, start);
  }

  /** Where the next line ends; -1 if it does not. */
  private int end(int from) {
    for (int i = from; i + 1 < bytes.length; i++) {
      if (bytes[i] == '\r' && bytes[i + 1] == '\n') {
        return i;
      }
    }
    return -1;
  }

  private static Read read(String line, long nanos) {
    Matcher m = LINE.matcher(line);
    if (!m.matches()) {
      throw new IllegalStateException("No line of this format: " + line);
    }
    BigDecimal grams = new BigDecimal(m.group(3));
    BigDecimal signed = m.group(2).equals("-") ? grams.negate() : grams;
    Mass mass = new Mass(signed.movePointRight(9).longValueExact());
    Reading.Mark mark = m.group(1).equals("ok") ? Reading.Mark.STABLE : Reading.Mark.MOVING;
    return new Read(mass, signed.toPlainString(), m.group(4), mark, line, nanos, Instant.EPOCH);
  }
}
