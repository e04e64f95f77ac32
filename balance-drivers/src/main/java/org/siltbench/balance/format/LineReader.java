package org.siltbench.balance.format;

/**
 * Cuts a stream of bytes into lines. What comes before the first line end is thrown away, for half
 * a line is a wrong mass; a line beyond {@link #MAX_LINE} bytes is dropped up to its end. Memory is
 * bounded: lines are kept in blocks of a few KiB, which go when no reading looks at them any more.
 * For one thread.
 */
public final class LineReader {

  /** The longest line kept, bytes. */
  public static final int MAX_LINE = 512;

  /** The most bytes {@link #accept} takes at once. */
  public static final int MAX_CHUNK = 2048;

  /** What {@link #next} found. */
  public enum Found {
    /** No whole line yet. */
    NOTHING,
    /** A line, from {@link #start()} to {@link #end()} of {@link #bytes()}. */
    LINE,
    /** The rest of a line that was under way when the stream began; not to be read. */
    FIRST_REST,
    /** A line that was too long; its bytes are gone. */
    TOO_LONG
  }

  private static final int LONGEST_END = 8;
  private static final int BLOCK = 8192;

  private enum State {
    UNSYNCED,
    READING,
    SKIPPING
  }

  private final byte[] terminator;
  private final long last;
  private final long otherLast;
  private final int[] candidates = new int[BLOCK + 1];
  private byte[] buffer = new byte[BLOCK];
  private int noted;
  private int looked;
  private final boolean startsOnLine;
  private State state;
  private int from;
  private int filled;
  private int start;
  private int end;

  /** A reader that throws away everything before the first line end. */
  public LineReader(Terminator ends) {
    this(ends, false);
  }

  /** A reader for a stream that is known to begin at the start of a line, or not. */
  public LineReader(Terminator ends, boolean startsOnLine) {
    this.terminator = ends.bytes();
    boolean any = terminator.length == 0;
    this.last = Words.eightTimes(any ? (byte) '\r' : terminator[terminator.length - 1]);
    this.otherLast = any ? Words.eightTimes((byte) '\n') : last;
    this.startsOnLine = startsOnLine;
    this.state = startsOnLine ? State.READING : State.UNSYNCED;
  }

  /** Forgets what is held: the stream begins anew. */
  public void reset() {
    from = filled;
    looked = noted;
    state = startsOnLine ? State.READING : State.UNSYNCED;
  }

  /** Takes bytes; {@link #next} must have said NOTHING before. */
  public void accept(byte[] chunk, int count) {
    if (count > MAX_CHUNK) {
      throw new IllegalArgumentException("at most " + MAX_CHUNK + " bytes at once");
    }
    makeRoom(count);
    System.arraycopy(chunk, 0, buffer, filled, count);
    filled += count;
    look(filled - count);
  }

  /**
   * Readings look at the bytes of their lines: a full block is left to them, and a new one begun.
   */
  private void makeRoom(int count) {
    if (filled - from > MAX_LINE + LONGEST_END) {
      throw new IllegalStateException("lines are waiting: call next() until it says NOTHING");
    }
    if (filled + count > BLOCK) {
      byte[] block = new byte[BLOCK];
      System.arraycopy(buffer, from, block, 0, filled - from);
      buffer = block;
      moveCandidates();
      filled -= from;
      from = 0;
    }
  }

  private void moveCandidates() {
    int kept = 0;
    for (int i = looked; i < noted; i++) {
      candidates[kept++] = candidates[i] - from;
    }
    looked = 0;
    noted = kept;
  }

  /** Notes every place of the new bytes where a line end may have its last byte. */
  private void look(int begin) {
    int count = noted;
    for (int at = begin; at < filled; at += Long.BYTES) {
      long word = Words.at(buffer, at);
      long hits = Words.all(word, last) | Words.all(word, otherLast);
      hits &= Words.mask(filled - at);
      candidates[count] = at + (Long.numberOfTrailingZeros(hits) >>> 3);
      count += hits == 0 ? 0 : 1;
      for (long rest = hits & (hits - 1); rest != 0; rest &= rest - 1) {
        candidates[count++] = at + (Long.numberOfTrailingZeros(rest) >>> 3);
      }
    }
    noted = count;
  }

  /** The next line, if it is whole. */
  public Found next() {
    while (looked < noted) {
      int at = candidates[looked++];
      int ends = endLength(at);
      if (ends > 0) {
        start = from;
        end = at + 1 - ends;
        from = at + 1;
        Found found = found();
        if (found != Found.NOTHING) {
          return found;
        }
      }
    }
    return noEnd();
  }

  private Found found() {
    State was = state;
    state = State.READING;
    return switch (was) {
      case UNSYNCED -> Found.FIRST_REST;
      case SKIPPING -> Found.NOTHING;
      case READING ->
          terminator.length == 0 && end == start
              ? Found.NOTHING
              : end - start > MAX_LINE ? Found.TOO_LONG : Found.LINE;
    };
  }

  private Found noEnd() {
    if (filled - from <= MAX_LINE + Math.max(0, terminator.length - 1)) {
      return Found.NOTHING; // the last bytes may be the front of the line end
    }
    from = filled - Math.max(0, terminator.length - 1);
    if (state == State.READING) {
      state = State.SKIPPING;
      return Found.TOO_LONG;
    }
    return Found.NOTHING;
  }

  /** The length of the line end whose last byte is at the given place; 0 if none is there. */
  private int endLength(int at) {
    if (terminator.length == 0) {
      return buffer[at] == '\r' || buffer[at] == '\n' ? 1 : 0;
    }
    int first = at + 1 - terminator.length;
    if (first < from) {
      return 0;
    }
    for (int i = 0; i < terminator.length; i++) {
      if (buffer[first + i] != terminator[i]) {
        return 0;
      }
    }
    return terminator.length;
  }

  /** Holds the line last found. */
  public byte[] bytes() {
    return buffer;
  }

  /** Where the line last found begins. */
  public int start() {
    return start;
  }

  /** Where it ends, without its line end. */
  public int end() {
    return end;
  }
}
