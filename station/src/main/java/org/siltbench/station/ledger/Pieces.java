package org.siltbench.station.ledger;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
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

    /** True if a newline follows. */
    boolean ended() {
      return ended;
    }

    /** Offset after it and its newline. */
    long end() {
      return end;
    }
  }

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
