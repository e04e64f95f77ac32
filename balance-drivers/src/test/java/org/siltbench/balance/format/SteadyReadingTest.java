package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.LineSpan;
import org.siltbench.balance.Reading;
import org.siltbench.balance.format.LineReader.Found;

/** While a balance talks on, nothing is made but its readings and the blocks of their lines. */
class SteadyReadingTest {

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
  private static final byte[] LINE = "+ 12.34567 g\r\n".getBytes(ISO_8859_1);
  private static final int LINES = 20_000;
  private static final int HEADER = 16;

  private final LineReader reader = new LineReader(Terminator.CR_LF, true);
  private final LineParser parser = LineFormat.standard().parser();
  private final Reading[] kept = new Reading[LINES];
  private byte[] block = {};
  private long blocks;

  @Test
  void nothingIsAllocatedBesidesTheReadingAndTheBytesOfItsLine() {
    read(); // the layout is drawn up, the classes are there
    blocks = 0;
    long before = THREADS.getCurrentThreadAllocatedBytes();
    read();
    long after = THREADS.getCurrentThreadAllocatedBytes();
    long readings = readingsAlone();
    assertEquals(
        readings + blocks, after - before, LINES / 20.0); // less than a byte in twenty lines
    assertTrue(blocks < 1.1 * LINES * LINE.length, () -> blocks + " bytes of blocks");
  }

  private void read() {
    for (int i = 0; i < LINES; i++) {
      reader.accept(LINE, LINE.length);
      for (Found found = reader.next(); found == Found.LINE; found = reader.next()) {
        kept[i] = parser.parse(reader.bytes(), reader.start(), reader.end(), i, Instant.EPOCH);
      }
      if (reader.bytes() != block) {
        block = reader.bytes();
        blocks += block.length + HEADER;
      }
    }
  }

  private long readingsAlone() {
    int span = LineSpan.of(12, 2, 10, false);
    long before = THREADS.getCurrentThreadAllocatedBytes();
    for (int i = 0; i < LINES; i++) {
      kept[i] = Reading.ofLine(i, "g", Reading.Mark.NONE, LINE, 0, span, i, Instant.EPOCH);
    }
    return THREADS.getCurrentThreadAllocatedBytes() - before;
  }
}
