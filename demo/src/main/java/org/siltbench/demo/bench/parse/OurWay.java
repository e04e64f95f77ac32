package org.siltbench.demo.bench.parse;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
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

  private static final int FIRST_LINES = 1000;
  private static final int ARRAY_HEADER = 16;
  private static final int SPAN = LineSpan.of(17, 7, 15, false);

  private final byte[] bytes;
  private final LineReader reader = new LineReader(FORMAT.ends());
  private final LineParser parser = FORMAT.parser();
  private final byte[] chunk = new byte[LineReader.MAX_CHUNK];
  private int taken;
  private byte[] block = {};
  private long blockBytes;

  private OurWay(Stream stream) {
    bytes = stream.bytes();
  }

  /** Reads all lines and adds up what they say. */
  public static long sum(Stream stream) {
    OurWay way = new OurWay(stream);
    long sum = 0;
    for (Reading r = way.next(); r != null; r = way.next()) {
      sum += Kept.keep(r, mass(r).nanograms() + r.mark().name().length());
    }
    return sum;
  }

  /** The same with the texts asked for. */
  public static long sumWithTexts(Stream stream) {
    OurWay way = new OurWay(stream);
    long sum = 0;
    for (Reading r = way.next(); r != null; r = way.next()) {
      sum += Kept.keep(r, mass(r).nanograms() + r.digits().length() + r.raw().length());
    }
    return sum;
  }

  /** All that is said of every line. */
  public static List<List<Object>> told(Stream stream) {
    OurWay way = new OurWay(stream);
    List<List<Object>> out = new ArrayList<>();
    for (Reading r = way.next(); r != null; r = way.next()) {
      out.add(List.of(mass(r), r.digits(), r.unit(), r.mark(), r.raw()));
    }
    return out;
  }

  private static Mass mass(Reading reading) {
    return Objects.requireNonNull(reading.mass(), "every line carries a mass");
  }

  /** The next line's reading; null at the end. */
  private @Nullable Reading next() {
    Found found = reader.next();
    while (found != Found.LINE) {
      if (found == Found.NOTHING && !take()) {
        return null;
      }
      found = reader.next();
    }
    Reading reading =
        parser.parse(reader.bytes(), reader.start(), reader.end(), taken, Instant.EPOCH);
    return Objects.requireNonNull(reading, "every line is read");
  }

  private boolean take() {
    int count = Math.min(chunk.length, bytes.length - taken);
    System.arraycopy(bytes, taken, chunk, 0, count);
    reader.accept(chunk, count);
    taken += count;
    if (block != reader.bytes()) {
      block = reader.bytes();
      blockBytes += block.length + ARRAY_HEADER;
    }
    return count > 0;
  }

  /**
   * The bytes allocated a line once reading is under way.
   *
   * @param reading the reading itself
   * @param block the share of the block that the reading looks at for its line
   * @param beyond anything else
   */
  public record Memory(double reading, double block, double beyond) {

    /** All of it. */
    public double line() {
      return reading + block + beyond;
    }
  }

  /** What reading a stream allocates, without its first lines, which a reader begins with. */
  public static Memory memory(Stream stream, LongSupplier allocated) {
    OurWay way = new OurWay(stream);
    for (int i = 0; i < FIRST_LINES; i++) {
      way.next();
    }
    way.blockBytes = 0;
    long before = allocated.getAsLong();
    for (Reading r = way.next(); r != null; r = way.next()) {
      Kept.keep(r, 0);
    }
    double all = allocated.getAsLong() - before;
    before = allocated.getAsLong();
    for (int i = 0; i < stream.lines(); i++) {
      Kept.keep(made(stream, i), 0);
    }
    double reading = (double) (allocated.getAsLong() - before) / stream.lines();
    double lines = stream.lines() - FIRST_LINES;
    return new Memory(reading, way.blockBytes / lines, (all - way.blockBytes) / lines - reading);
  }

  /** Only makes readings of the same size: what cannot be saved. */
  public static long alone(Stream stream) {
    long sum = 0;
    for (int i = 0; i < stream.lines(); i++) {
      Reading reading = made(stream, i);
      sum += Kept.keep(reading, mass(reading).nanograms());
    }
    return sum;
  }

  private static Reading made(Stream stream, int i) {
    return Reading.ofLine(
        i, "g", Reading.Mark.STABLE, stream.bytes(), 16 + i * 19, SPAN, i, Instant.EPOCH);
  }
}
