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

  /** Four whole pieces, and before them what is left of a line in the block before. */
  private static final int BLOCK = 4 * MAX_CHUNK + MAX_LINE + LONGEST_END;

  private enum State {
    UNSYNCED,
    READING,
    SKIPPING
  }

  private final int endLength;
  private final long endWord;
  private final long endMask;
  private final long last;
  private final long otherLast;
  private byte[] buffer = block();
  private final boolean startsOnLine;
  private State state;
  private int from;
  private int looked;
  private int filled;
  private int start;
  private int end;

  /** A reader that throws away everything before the first line end. */
  public LineReader(Terminator ends) {
    this(ends, false);
  }

  /** A reader for a stream that is known to begin at the start of a line, or not. */
  public LineReader(Terminator ends, boolean startsOnLine) {
    byte[] terminator = ends.bytes();
    this.endLength = terminator.length;
    this.last = Words.eightTimes(endLength == 0 ? (byte) '\r' : terminator[endLength - 1]);
    this.otherLast = endLength == 0 ? Words.eightTimes((byte) '\n') : last;
    this.endWord = Words.of(terminator);
    this.endMask = Words.mask(terminator.length);
    this.startsOnLine = startsOnLine;
    this.state = startsOnLine ? State.READING : State.UNSYNCED;
  }

  /** Forgets what is held: the stream begins anew. */
  public void reset() {
    from = filled;
    looked = filled;
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
  }

  /**
   * Readings look at the bytes of their lines: a full block is left to them, and a new one begun.
   */
  private void makeRoom(int count) {
    if (filled - from > MAX_LINE + LONGEST_END) {
      throw new IllegalStateException("lines are waiting: call next() until it says NOTHING");
    }
    if (filled + count > BLOCK) {
      byte[] block = block();
      System.arraycopy(buffer, from, block, 0, filled - from);
      buffer = block;
      looked -= from;
      filled -= from;
      from = 0;
    }
  }

  /** A word can be read at every byte of a line. */
  private static byte[] block() {
    return new byte[BLOCK + Long.BYTES];
  }

  /** The next line, if it is whole. */
  public Found next() {
    for (int at = lastOfEnd(); at < filled; at = lastOfEnd()) {
      looked = at + 1;
      int ends = endLength(at);
      if (ends > 0) {
        start = from;
        end = at + 1 - ends;
        from = at + 1;
        Found found = isPlainLine() ? Found.LINE : found();
        if (found != Found.NOTHING) {
          return found;
        }
      }
    }
    looked = filled;
    return noEnd();
  }

  /**
   * Where the next byte stands that may be the last of a line end; behind what is filled if there
   * is none. Eight bytes at a time: there are as many behind the last.
   */
  private int lastOfEnd() {
    for (int at = looked; at < filled; at += Long.BYTES) {
      long hits = hits(at);
      if (hits != 0) {
        return at + (Long.numberOfTrailingZeros(hits) >>> 3);
      }
    }
    return filled;
  }

  private long hits(int at) {
    long word = Words.inside(buffer, at);
    long hits = Words.some(word, last);
    return last == otherLast ? hits : hits | Words.some(word, otherLast);
  }

  private boolean isPlainLine() {
    return state == State.READING && end > start && end - start <= MAX_LINE;
  }

  private Found found() {
    State was = state;
    state = State.READING;
    return switch (was) {
      case UNSYNCED -> Found.FIRST_REST;
      case SKIPPING -> Found.NOTHING;
      case READING ->
          endLength == 0 && end == start
              ? Found.NOTHING
              : end - start > MAX_LINE ? Found.TOO_LONG : Found.LINE;
    };
  }

  private Found noEnd() {
    if (filled - from <= MAX_LINE + Math.max(0, endLength - 1)) {
      return Found.NOTHING; // the last bytes may be the front of the line end
    }
    from = filled - Math.max(0, endLength - 1);
    if (state == State.READING) {
      state = State.SKIPPING;
      return Found.TOO_LONG;
    }
    return Found.NOTHING;
  }

  /** The length of the line end whose last byte is at the given place; 0 if none is there. */
  private int endLength(int at) {
    if (endLength == 0) {
      return buffer[at] == '\r' || buffer[at] == '\n' ? 1 : 0;
    }
    int first = at + 1 - endLength;
    boolean is = first >= from && (Words.inside(buffer, first) & endMask) == endWord;
    return is ? endLength : 0;
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
