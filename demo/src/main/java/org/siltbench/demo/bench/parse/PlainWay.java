package org.siltbench.demo.bench.parse;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

  private PlainWay() {}

  /** Reads all lines and adds up what they say, so that nothing can be left out. */
  public static long sum(Stream stream) {
    return each(stream, r -> Kept.keep(r, r.mass().nanograms() + r.mark().name().length()));
  }

  /** All that is said of every line. */
  public static List<List<Object>> told(Stream stream) {
    List<List<Object>> out = new ArrayList<>();
    long unused =
        each(
            stream,
            r -> {
              out.add(List.of(r.mass(), r.digits(), r.unit(), r.mark(), r.raw()));
              return 1;
            });
    return out;
  }

  private static long each(Stream stream, ToLongFunction<Read> use) {
    byte[] bytes = stream.bytes();
    long sum = 0;
    int start = -1;
    for (int i = 1; i < bytes.length; i++) {
      if (bytes[i] == '\n' && bytes[i - 1] == '\r') {
        if (start >= 0) {
          sum += use.applyAsLong(read(new String(bytes, start, i - 1 - start, ISO_8859_1), i));
        }
        start = i + 1;
      }
    }
    return sum;
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
