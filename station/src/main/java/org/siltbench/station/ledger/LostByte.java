package org.siltbench.station.ledger;

import java.io.IOException;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * One byte of the newest act that a power cut kept from the disk: the last of a block of the disk,
 * where a first part of the act ended one byte before the block did. More lost bytes are seen as a
 * hole; one alone looks like a byte that was changed. The line's own hash tells which one it was.
 *
 * @param at offset in the file
 * @param value the byte
 * @param line the line that is whole with it, or that ends with it
 */
record LostByte(long at, byte value, Line line) {

  /** Blocks of every disk are multiples of this. */
  private static final int BLOCK = 512;

  /** The byte that a piece lacks; null if that is not all that is wrong with it. */
  static @Nullable LostByte of(Pieces.Piece piece) {
    int at = place(piece);
    return at < 0 ? null : found(piece.entry().clone(), piece.at(), at);
  }

  /** The same; null too if a line after the piece began a write of its own. */
  static @Nullable LostByte ofNewestAct(Disk.File file, Pieces.Piece piece) throws IOException {
    LostByte lost = of(piece);
    return lost != null && Tail.isOfOneAct(file, piece) ? lost : null;
  }

  /** Where the only zero of a piece stands, at the end of a block; -1 else. */
  private static int place(Pieces.Piece piece) {
    byte[] bytes = piece.entry();
    int at = -1;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == 0 && (at >= 0 || (piece.at() + i) % BLOCK != BLOCK - 1)) {
        return -1;
      }
      at = bytes[i] == 0 ? i : at;
    }
    return at;
  }

  private static @Nullable LostByte found(byte[] bytes, long start, int at) {
    Line before = Tail.line(Arrays.copyOf(bytes, at), start);
    if (before != null) {
      return new LostByte(start + at, (byte) '\n', before);
    }
    for (int value = 1; value < 256; value++) {
      bytes[at] = (byte) value;
      Line line = Tail.line(bytes, start);
      if (line != null) {
        return new LostByte(start + at, bytes[at], line);
      }
    }
    return null;
  }

  /** Writes it again and forces it. */
  void mend(Disk.File file) throws IOException {
    file.writeAll(new byte[] {value}, at);
    file.force();
  }
}
