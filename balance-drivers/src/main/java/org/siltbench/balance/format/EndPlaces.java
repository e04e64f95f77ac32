package org.siltbench.balance.format;

/**
 * The places in a block where a line end may have its last byte, found eight bytes at a time. Some
 * of them are none: whoever asks looks again.
 */
final class EndPlaces {

  static final int NONE = -1;

  private final long last;
  private final long otherLast;
  private final int[] places;
  private int noted;
  private int looked;

  EndPlaces(byte[] terminator, int block) {
    boolean any = terminator.length == 0;
    last = Words.eightTimes(any ? (byte) '\r' : terminator[terminator.length - 1]);
    otherLast = any ? Words.eightTimes((byte) '\n') : last;
    places = new int[block + 1];
  }

  /** Looks at the bytes from {@code begin} to before {@code end}; there are eight behind them. */
  void look(byte[] bytes, int begin, int end) {
    int count = noted;
    int at = begin;
    for (; at <= end - Long.BYTES; at += Long.BYTES) {
      count = note(at, hits(Words.inside(bytes, at)), count);
    }
    noted = note(at, hits(Words.inside(bytes, at)) & Words.mask(end - at), count);
  }

  private long hits(long word) {
    long hits = Words.some(word, last);
    return last == otherLast ? hits : hits | Words.some(word, otherLast);
  }

  private int note(int at, long hits, int count) {
    places[count] = at + (Long.numberOfTrailingZeros(hits) >>> 3);
    long rest = hits & (hits - 1);
    return rest == 0 ? count + (hits == 0 ? 0 : 1) : noteMore(at, rest, count + 1);
  }

  private int noteMore(int at, long hits, int count) {
    int more = count;
    for (long rest = hits; rest != 0; rest &= rest - 1) {
      places[more++] = at + (Long.numberOfTrailingZeros(rest) >>> 3);
    }
    return more;
  }

  /** The next place, once; {@link #NONE} if there is none. */
  int next() {
    return looked < noted ? places[looked++] : NONE;
  }

  /** The bytes have moved so far to the left in another block. */
  void move(int by) {
    int kept = 0;
    for (int i = looked; i < noted; i++) {
      places[kept++] = places[i] - by;
    }
    looked = 0;
    noted = kept;
  }

  /** Passes over all. */
  void forget() {
    looked = noted;
  }
}
