package org.siltbench.balance.format;

/**
 * Cuts a stream of bytes into lines. What comes before the first line end is thrown away, for half
 * a line is a wrong mass; a line beyond {@link #MAX_LINE} bytes is dropped up to its end. Memory is
 * bounded and nothing is allocated after construction. For one thread.
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

  private enum State {
    UNSYNCED,
    READING,
    SKIPPING
  }

  private final byte[] buffer = new byte[MAX_LINE + LONGEST_END + MAX_CHUNK];
  private final byte[] terminator;
  private final boolean startsOnLine;
  private State state;
  private int from;
  private int scanned;
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
    this.startsOnLine = startsOnLine;
    this.state = startsOnLine ? State.READING : State.UNSYNCED;
  }

  /** Forgets what is held: the stream begins anew. */
  public void reset() {
    from = 0;
    scanned = 0;
    filled = 0;
    state = startsOnLine ? State.READING : State.UNSYNCED;
  }

  /** Takes bytes; {@link #next} must have said NOTHING before. */
  public void accept(byte[] chunk, int count) {
    if (count > MAX_CHUNK) {
      throw new IllegalArgumentException("at most " + MAX_CHUNK + " bytes at once");
    }
    makeRoom();
    System.arraycopy(chunk, 0, buffer, filled, count);
    filled += count;
  }

  private void makeRoom() {
    if (filled - from > MAX_LINE + LONGEST_END) {
      throw new IllegalStateException("lines are waiting: call next() until it says NOTHING");
    }
    System.arraycopy(buffer, from, buffer, 0, filled - from);
    filled -= from;
    scanned -= from;
    from = 0;
  }

  /** The next line, if it is whole. */
  public Found next() {
    while (skipToEnd()) {
      int ends = endLength(scanned);
      scanned++;
      if (ends > 0) {
        start = from;
        end = scanned - ends;
        from = scanned;
        Found found = found();
        if (found != Found.NOTHING) {
          return found;
        }
      }
    }
    return noEnd();
  }

  /** Moves on to the next byte that may end a line; false if none is here yet. */
  private boolean skipToEnd() {
    byte[] bytes = buffer;
    int at = scanned;
    int limit = filled;
    if (terminator.length == 0) {
      while (at < limit && bytes[at] != '\r' && bytes[at] != '\n') {
        at++;
      }
    } else {
      byte last = terminator[terminator.length - 1];
      while (at < limit && bytes[at] != last) {
        at++;
      }
    }
    scanned = at;
    return at < limit;
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
