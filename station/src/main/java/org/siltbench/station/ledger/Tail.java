package org.siltbench.station.ledger;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** The end of a file as a power cut leaves it. */
final class Tail {

  private Tail() {}

  /**
   * True if a piece that is no entry, and all that follows it, can be one act that a power cut kept
   * from reaching the disk whole. It has holes, or ends within a line; and no line after it began a
   * write of its own, since that would have come after the piece was forced.
   */
  static boolean torn(Disk.File file, Pieces.Piece bad) throws IOException {
    Pieces pieces = new Pieces(file, bad.end());
    Pieces.Piece piece = bad;
    Pieces.@Nullable Piece next = pieces.next();
    while (next != null) {
      if (!piece.hasHole() && !continuesAct(piece, bad)) {
        return false;
      }
      piece = next;
      next = pieces.next();
    }
    return piece.torn() || continuesAct(piece, bad);
  }

  /** True if no line after the piece began a write of its own. */
  static boolean isOfOneAct(Disk.File file, Pieces.Piece first) throws IOException {
    Pieces pieces = new Pieces(file, first.end());
    Pieces.@Nullable Piece piece = pieces.next();
    while (piece != null && (piece.torn() || continuesAct(piece, first))) {
      piece = pieces.next();
    }
    return piece == null;
  }

  private static boolean continuesAct(Pieces.Piece piece, Pieces.Piece bad) {
    Line line = line(piece.entry(), piece.at());
    LostByte lost = line == null && piece != bad ? LostByte.of(piece) : null;
    Line mended = lost == null ? line : lost.line();
    return mended != null && !mended.part().isFirst();
  }

  /** The line these bytes are; null if they are none. */
  static @Nullable Line line(byte[] bytes, long at) {
    try {
      return LineText.read(bytes, at);
    } catch (BadLine e) {
      return null;
    }
  }
}
