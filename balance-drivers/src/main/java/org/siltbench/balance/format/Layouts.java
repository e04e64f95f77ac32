package org.siltbench.balance.format;

import org.jspecify.annotations.Nullable;

/**
 * The layouts seen in a stream, by the length of the line. One is drawn up from a line that was
 * walked, and again when it has not fitted for a while: a balance keeps to its columns, and one
 * that does not costs no more than the walk.
 */
final class Layouts {

  private static final int SLOTS = 64;
  private static final int MOST_PATIENCE = 1 << 20;

  private final Columns columns;
  private final @Nullable Layout[] known = new Layout[SLOTS];
  private final int[] misses = new int[SLOTS];
  private final int[] patience = new int[SLOTS];

  Layouts(Fields fields, Walk walk) {
    columns = new Columns(fields, walk);
  }

  /** The layout that lines of this length had; null if none is known. */
  @Nullable Layout of(int length) {
    return known[length & (SLOTS - 1)];
  }

  /** Learns from a line that was walked, each time after more of them. */
  void learn(byte[] bytes, int from, int to, Match found) {
    int slot = (to - from) & (SLOTS - 1);
    if (misses[slot]++ >= patience[slot]) {
      misses[slot] = 0;
      patience[slot] = Math.min(2 * patience[slot] + 1, MOST_PATIENCE);
      known[slot] = columns.of(bytes, from, to, found);
    }
  }
}
