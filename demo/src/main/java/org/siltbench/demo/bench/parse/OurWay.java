package org.siltbench.demo.bench.parse;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToLongFunction;
import org.siltbench.balance.LineSpan;
import org.siltbench.balance.Reading;
import org.siltbench.balance.format.FormatText;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.format.LineParser;
import org.siltbench.balance.format.LineReader;
import org.siltbench.balance.format.LineReader.Found;
import org.siltbench.calc.quantity.Mass;

/** Our way: line reader and line format, in chunks as a link hands them over. */
public final class OurWay {

  private static final LineFormat FORMAT =
      FormatText.parse(
          """
          siltbench line format 1
          name: bench
          ends: CR LF
          line: mark gap sign blanks number gap unit
          decimals: 5
          unit 'g': g
          mark 'ok': stable
          mark '..': moving
          """);

  private OurWay() {}

  /** Reads all lines and adds up what they say. */
  public static long sum(Stream stream) {
    return each(stream, r -> Kept.keep(r, mass(r).nanograms() + r.mark().name().length()));
  }

  /** The same with the texts asked for. */
  public static long sumWithTexts(Stream stream) {
    return each(
        stream, r -> Kept.keep(r, mass(r).nanograms() + r.digits().length() + r.raw().length()));
  }

  /** All that is said of every line. */
  public static List<List<Object>> told(Stream stream) {
    List<List<Object>> out = new ArrayList<>();
    long unused =
        each(
            stream,
            r -> {
              out.add(List.of(mass(r), r.digits(), r.unit(), r.mark(), r.raw()));
              return 1;
            });
    return out;
  }

  private static Mass mass(Reading reading) {
    return Objects.requireNonNull(reading.mass(), "every line carries a mass");
  }

  private static long each(Stream stream, ToLongFunction<Reading> use) {
    LineReader reader = new LineReader(FORMAT.ends());
    LineParser parser = FORMAT.parser();
    byte[] bytes = stream.bytes();
    byte[] chunk = new byte[LineReader.MAX_CHUNK];
    long sum = 0;
    for (int from = 0; from < bytes.length; from += chunk.length) {
      int count = Math.min(chunk.length, bytes.length - from);
      System.arraycopy(bytes, from, chunk, 0, count);
      reader.accept(chunk, count);
      sum += lines(reader, parser, from, use);
    }
    return sum;
  }

  private static long lines(
      LineReader reader, LineParser parser, long nanos, ToLongFunction<Reading> use) {
    long sum = 0;
    for (Found found = reader.next(); found != Found.NOTHING; found = reader.next()) {
      if (found == Found.LINE) {
        Reading reading =
            parser.parse(reader.bytes(), reader.start(), reader.end(), nanos, Instant.EPOCH);
        sum += use.applyAsLong(Objects.requireNonNull(reading, "every line is read"));
      }
    }
    return sum;
  }

  /** Only makes readings of the same size: what cannot be saved. */
  public static long alone(Stream stream) {
    int span = LineSpan.of(17, 7, 15, false);
    long sum = 0;
    for (int i = 0; i < stream.lines(); i++) {
      Reading reading =
          Reading.ofLine(
              i, "g", Reading.Mark.STABLE, stream.bytes(), 16 + i * 19, span, i, Instant.EPOCH);
      sum += Kept.keep(reading, mass(reading).nanograms());
    }
    return sum;
  }
}
