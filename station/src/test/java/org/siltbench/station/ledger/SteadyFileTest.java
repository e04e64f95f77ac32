package org.siltbench.station.ledger;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedByInterruptException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SteadyFileTest {

  @TempDir Path folder;

  @AfterEach
  void clear() {
    Thread.interrupted();
  }

  @Test
  void anInterruptedThreadDoesAllThatAFileOffersAndStaysInterrupted() throws Exception {
    Path path = folder.resolve("file");
    try (SteadyFile file = SteadyFile.open(path)) {
      Thread.currentThread().interrupt();
      file.writeAll("one two three".getBytes(US_ASCII), 0);
      file.force();
      file.truncate(7);
      assertEquals(7, file.size());
      assertEquals("two", new String(file.bytes(4, 3), US_ASCII));
      Disk.Lock lock = file.tryLock(0);
      assertNotNull(lock);
      lock.release();
      SteadyFile.forceFolder(folder);
      assertTrue(Thread.interrupted());
    }
    assertEquals("one two", Files.readString(path));
  }

  /** The reason for this class: if that ever ends, the class can go. */
  @Test
  void aPlainChannelIsClosedByTheSame() throws Exception {
    try (FileChannel plain =
        FileChannel.open(
            folder.resolve("file"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      Thread.currentThread().interrupt();
      assertThrows(ClosedByInterruptException.class, () -> plain.write(ByteBuffer.allocate(1), 0));
    }
  }

  @Test
  void buffersOfAnyKindAreReadAndWrittenWhereTheyStand() throws Exception {
    try (SteadyFile file = SteadyFile.open(folder.resolve("file"))) {
      ByteBuffer middle = ByteBuffer.wrap("-abc-".getBytes(US_ASCII), 1, 3).slice();
      assertEquals(3, file.write(middle, 2));
      assertEquals(0, middle.remaining());
      ByteBuffer direct = ByteBuffer.allocateDirect(2);
      direct.put("de".getBytes(US_ASCII)).flip();
      assertEquals(2, file.write(direct.asReadOnlyBuffer(), 5));
      assertEquals("\0\0abcde", new String(file.bytes(0, 7), US_ASCII));
      ByteBuffer into = ByteBuffer.allocateDirect(4);
      assertEquals(2, file.read(into, 5));
      assertEquals('e', into.flip().get(1));
      assertEquals(-1, file.read(ByteBuffer.allocate(4), 7));
      assertEquals(-1, file.read(ByteBuffer.allocateDirect(4), 9));
    }
  }

  @Test
  void whatIsOpenForReadingIsNotWrittenAndWhatIsMissingIsNotMade() throws Exception {
    Path path = folder.resolve("file");
    assertThrows(IOException.class, () -> SteadyFile.read(path));
    Files.writeString(path, "kept");
    try (SteadyFile file = SteadyFile.read(path)) {
      assertThrows(IOException.class, () -> file.writeAll(new byte[1], 0));
    }
    assertEquals("kept", Files.readString(path));
  }
}
