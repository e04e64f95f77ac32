package org.siltbench.station.ledger;

import java.io.IOException;

/**
 * What a writer may take for granted about the end of its file. A writer that could not force may
 * have cut its act off without success: then the system shows the shorter file to all, while on the
 * disk that act still follows. So the end is cut again and that is forced, before the first act
 * after the start and after every turn of another writer.
 */
final class End {

  private final Pen pen;
  private long turn;
  private boolean sure;

  End(Pen pen) {
    this.pen = pen;
  }

  /** Before an act is written. All that stands in the file must have been read. */
  void beforeAct(Disk.File file, long end) throws IOException {
    long now = pen.take();
    if (now != turn || !sure) {
      turn = now;
      if (file.size() > end) {
        throw new IOException("there is more in the ledger than was read");
      }
      cut(file, end);
    }
    sure = false;
  }

  /** After an act was written and forced. */
  void afterAct() {
    sure = true;
  }

  /** Before the end is mended. */
  void beforeMending() throws IOException {
    sure = false;
    turn = pen.take();
  }

  /** True if nobody else has changed a byte since this writer last did. */
  boolean isUntouched() throws IOException {
    return turn != 0 && pen.isAt(turn);
  }

  /**
   * Changes the size in any case, since a system may have forgotten a change it could not force.
   */
  void cut(Disk.File file, long end) throws IOException {
    sure = false;
    if (file.size() == end) {
      file.writeAll(new byte[1], end);
    }
    file.truncate(end);
    file.force();
    sure = true;
  }
}
