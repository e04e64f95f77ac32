package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.format.LineReader.Found;

class LineReaderTest {

  /** Feeds text in chunks of the given size and lists what is found. */
  static List<String> cut(LineReader reader, String text, int chunkSize) {
    byte[] all = text.getBytes(ISO_8859_1);
    List<String> out = new ArrayList<>();
    for (int at = 0; at < all.length; at += chunkSize) {
      int count = Math.min(chunkSize, all.length - at);
      byte[] chunk = new byte[count];
      System.arraycopy(all, at, chunk, 0, count);
      reader.accept(chunk, count);
      for (Found f = reader.next(); f != Found.NOTHING; f = reader.next()) {
        out.add(f == Found.LINE ? line(reader) : f.name());
      }
    }
    return out;
  }

  private static String line(LineReader reader) {
    return new String(reader.bytes(), reader.start(), reader.end() - reader.start(), ISO_8859_1);
  }

  @Test
  void whatComesBeforeTheFirstLineEndIsThrownAway() {
    List<String> found = cut(new LineReader(Terminator.CR_LF), "345 g\r\n0.1 g\r\n0.2 g\r\n", 3);
    assertEquals(List.of("FIRST_REST", "0.1 g", "0.2 g"), found);
  }

  @Test
  void afterAResetTheFirstRestIsThrownAwayAgain() {
    LineReader reader = new LineReader(Terminator.ANY);
    cut(reader, "x\n1\n2", 2);
    reader.reset();
    assertEquals(List.of("FIRST_REST", "4"), cut(reader, "3\n4\n", 1));
  }

  @Test
  void crLfAndBothEndALineWhereAnyDoesAndEmptyLinesAreSkipped() {
    String text = "x\n1\r2\n3\r\n\r\n4\n\r5\r";
    List<String> found = cut(new LineReader(Terminator.ANY), text, 4);
    assertEquals(List.of("FIRST_REST", "1", "2", "3", "4", "5"), found);
  }

  @Test
  void anEndOfItsOwnKindIsTakenAndNoOther() {
    List<String> found = cut(new LineReader(new Terminator(";\u0003")), "a;\u0003b;c\n;\u0003", 1);
    assertEquals(List.of("FIRST_REST", "b;c\n"), found);
  }

  @Test
  void aLineWithoutEndIsDroppedOnceAndTheNextIsReadAgain() {
    String huge = "9".repeat(100_000);
    List<String> found = cut(new LineReader(Terminator.ANY), "x\n" + huge + "\n0.1 g\n", 700);
    assertEquals(List.of("FIRST_REST", "TOO_LONG", "0.1 g"), found);
  }

  @Test
  void theLongestLineIsKeptAndOneByteMoreIsNot() {
    String longest = "9".repeat(LineReader.MAX_LINE);
    LineReader reader = new LineReader(Terminator.ANY, true);
    assertEquals(
        List.of(longest, "TOO_LONG", "1"), cut(reader, longest + "\n" + longest + "9\n1\n", 100));
  }

  @Property(tries = 300)
  void chunkingChangesNothing(@ForAll long seed, @ForAll @IntRange(min = 1, max = 900) int size) {
    String text = noise(seed);
    assertEquals(
        cut(new LineReader(Terminator.CR_LF), text, 2000),
        cut(new LineReader(Terminator.CR_LF), text, size));
  }

  private static String noise(long seed) {
    RandomGenerator random = new java.util.SplittableRandom(seed);
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < 40; i++) {
      int length = random.nextInt(10) == 0 ? 500 + random.nextInt(30) : random.nextInt(20);
      for (int k = 0; k < length; k++) {
        out.append("0123456789 \r\ng".charAt(random.nextInt(14)));
      }
      out.append("\r\n");
    }
    return out.toString();
  }
}
