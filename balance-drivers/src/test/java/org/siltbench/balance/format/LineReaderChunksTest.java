package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.Reading;
import org.siltbench.balance.format.LineReader.Found;

/** Lines are the same however the bytes are cut, and stay as they came while others follow. */
class LineReaderChunksTest {

  private static final List<String> ENDS = List.of("", "\r\n", "\n", ";\u0003", "\r\r", "ab\n");

  @Test
  void drawnStreamsGiveTheSameLinesAsAPlainCutterByteByByte() {
    long seed = new SplittableRandom().nextLong();
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 400; i++) {
      String ends = ENDS.get(random.nextInt(ENDS.size()));
      byte[] stream = stream(random, ends);
      boolean startsOnLine = random.nextBoolean();
      List<String> plain = cut(new LineReader(new Terminator(ends), startsOnLine), stream, () -> 1);
      LineReader reader = new LineReader(new Terminator(ends), startsOnLine);
      assertEquals(
          plain,
          cut(reader, stream, () -> 1 + random.nextInt(LineReader.MAX_CHUNK)),
          () -> "seed " + seed);
      assertEquals(expected(new String(stream, ISO_8859_1), ends, startsOnLine), plain);
    }
  }

  private static byte[] stream(SplittableRandom random, String ends) {
    String end = ends.isEmpty() ? "\r\n" : ends;
    StringBuilder out = new StringBuilder();
    for (int i = random.nextInt(400); i > 0; i--) {
      int length = random.nextInt(20) == 0 ? 400 + random.nextInt(150) : random.nextInt(40);
      for (int c = 0; c < length; c++) {
        boolean odd = random.nextInt(15) == 0;
        out.append(odd ? end.charAt(random.nextInt(end.length())) : (char) ('A' + c % 26));
      }
      out.append(end);
    }
    return out.toString().getBytes(ISO_8859_1);
  }

  /** By other means: the text split at every end from the left. */
  private static List<String> expected(String stream, String ends, boolean startsOnLine) {
    List<String> out = new ArrayList<>();
    int from = 0;
    boolean first = !startsOnLine;
    for (int at = end(stream, ends, 0); at >= 0; at = end(stream, ends, from)) {
      String line = stream.substring(from, at);
      from = at + Math.max(1, ends.length());
      if (first) {
        out.add("FIRST_REST");
      } else if (line.length() > LineReader.MAX_LINE) {
        out.add("TOO_LONG");
      } else if (!(ends.isEmpty() && line.isEmpty())) {
        out.add(line);
      }
      first = false;
    }
    return out;
  }

  private static int end(String stream, String ends, int from) {
    if (!ends.isEmpty()) {
      return stream.indexOf(ends, from);
    }
    int cr = stream.indexOf('\r', from);
    int lf = stream.indexOf('\n', from);
    return cr < 0 || lf < 0 ? Math.max(cr, lf) : Math.min(cr, lf);
  }

  /** How many bytes come next. */
  private interface Sizes {
    int next();
  }

  private static List<String> cut(LineReader reader, byte[] stream, Sizes sizes) {
    List<String> out = new ArrayList<>();
    byte[] chunk = new byte[LineReader.MAX_CHUNK];
    for (int from = 0; from < stream.length; ) {
      int count = Math.min(sizes.next(), stream.length - from);
      System.arraycopy(stream, from, chunk, 0, count);
      reader.accept(chunk, count);
      from += count;
      for (Found found = reader.next(); found != Found.NOTHING; found = reader.next()) {
        out.add(
            found == Found.LINE
                ? new String(
                    reader.bytes(), reader.start(), reader.end() - reader.start(), ISO_8859_1)
                : found.name());
      }
    }
    return out;
  }

  @Test
  void aReadingStaysAsItWasWhileThousandsOfLinesFollowAndTheLinkIsLost() {
    LineReader reader = new LineReader(Terminator.CR_LF, true);
    LineParser parser = LineFormat.standard().parser();
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < 5000; i++) {
      byte[] line = ("+ " + i + ".25 mg\r\n").getBytes(ISO_8859_1);
      reader.accept(line, line.length);
      assertEquals(Found.LINE, reader.next());
      assertEquals(Found.NOTHING, next(reader, parser, readings, i));
    }
    for (int i = 0; i < 5000; i++) {
      assertEquals("+ " + i + ".25 mg", readings.get(i).raw());
      assertEquals(i + ".25", readings.get(i).digits());
    }
  }

  private static Found next(LineReader reader, LineParser parser, List<Reading> to, int i) {
    to.add(parser.parse(reader.bytes(), reader.start(), reader.end(), i, Instant.EPOCH));
    if (i % 700 == 699) {
      reader.reset();
    }
    return reader.next();
  }
}
