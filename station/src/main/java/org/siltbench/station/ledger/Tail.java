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
      if (!piece.hasHole() && !continuesAct(piece)) {
        return false;
      }
      piece = next;
      next = pieces.next();
    }
    return piece.torn() || continuesAct(piece);
  }

  private static boolean continuesAct(Pieces.Piece piece) {
    try {
      return !LineText.read(piece.entry(), piece.at()).part().isFirst();
    } catch (BadLine e) {
      return false;
    }
  }
}
