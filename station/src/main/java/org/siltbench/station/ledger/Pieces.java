package org.siltbench.station.ledger;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Cuts a file into lines, without ever holding more than the longest line. */
final class Pieces {

  /** What stands between two newlines. */
  static final class Piece {
    private final long at;
    private final byte[] bytes;
    private final boolean ended;
    private final long end;

    private Piece(long at, byte[] bytes, boolean ended, long end) {
      this.at = at;
      this.bytes = bytes;
      this.ended = ended;
      this.end = end;
    }

    /** Offset of its first byte. */
    long at() {
      return at;
    }

    /** Its bytes, cut where there are more than the longest line has. */
    byte[] bytes() {
      return bytes;
    }

    /**
     * Its bytes, without the zeros that a power cut may have left at the end of the file: JSON has
     * none.
     */
    byte[] entry() {
      int length = bytes.length;
      while (!ended && length > 0 && bytes[length - 1] == 0) {
        length--;
      }
      return length == bytes.length ? bytes : Arrays.copyOf(bytes, length);
    }

    /** True if a newline follows. */
    boolean ended() {
      return ended;
    }

    /**
     * True if this, as the last piece of a file, is a line that a power cut or a kill kept from
     * being written whole. Such a line was never acknowledged. A line that was whole and has been
     * changed since is not torn: it has its end, and no hole where bytes did not reach the disk.
     */
    boolean torn() {
      return hasHole() || (!ended && !END.matcher(text()).find());
    }

    private String text() {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    /** Unwritten bytes are zeros: from the start on, or more than one together. */
    boolean hasHole() {
      for (int i = 0; i < bytes.length - 1; i++) {
        if (bytes[i] == 0 && (i == 0 || bytes[i + 1] == 0)) {
          return true;
        }
      }
      return false;
    }

    /** Offset after it and its newline. */
    long end() {
      return end;
    }
  }

  private static final Pattern END = Pattern.compile(",\"sum\":\"[0-9a-f]{64}\"}");

  private final Disk.File file;
  private final ByteBuffer buffer = ByteBuffer.allocate(1 << 16).limit(0);
  private long at;

  Pieces(Disk.File file, long from) {
    this.file = file;
    this.at = from;
  }

  /** The next piece, or null at the end of the file. */
  @Nullable Piece next() throws IOException {
    long start = at;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(512);
    while (buffer.hasRemaining() || fill()) {
      boolean ended = take(bytes);
      if (ended) {
        return new Piece(start, bytes.toByteArray(), true, at);
      }
    }
    return at == start ? null : new Piece(start, bytes.toByteArray(), false, at);
  }

  private boolean fill() throws IOException {
    buffer.clear();
    int read = file.read(buffer, at);
    buffer.flip();
    return read > 0;
  }

  /** Takes the bytes up to a newline or the end of the buffer; true if there was a newline. */
  private boolean take(ByteArrayOutputStream bytes) {
    byte[] array = buffer.array();
    int from = buffer.position();
    int to = from;
    while (to < buffer.limit() && array[to] != '\n') {
      to++;
    }
    int room = LineText.MAX_BYTES + 1 - bytes.size();
    bytes.write(array, from, Math.min(room, to - from));
    boolean ended = to < buffer.limit();
    int past = ended ? to + 1 : to;
    at += past - from;
    buffer.position(past);
    return ended;
  }
}
