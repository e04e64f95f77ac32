package org.siltbench.station.window.scan;

/**
 * Tells a scanner from a person by time alone: a scanner types its characters without a pause and
 * ends with Enter or Tab. Pure: characters and moments in, an opinion out.
 */
final class Burst {

  /** Keyboard scanners send a character every 1 to 25 ms; nobody types with less than 40. */
  static final long MOST_BETWEEN_NANOS = 35_000_000L;

  /** What is as short as the number of a dish must come as fast as only a scanner can send it. */
  static final long MOST_BETWEEN_SHORT_NANOS = 20_000_000L;

  private static final int LEAST = 3;
  private static final int MOST = 400;

  private final StringBuilder text = new StringBuilder();
  private long last;
  private long slowest;

  /** True if this moment goes on where the last character left off. */
  boolean goesOn(long nanos) {
    return text.length() > 0 && text.length() < MOST && nanos - last <= MOST_BETWEEN_NANOS;
  }

  /** A character came; what does not go on begins anew. */
  void add(char c, long nanos) {
    if (!goesOn(nanos)) {
      text.setLength(0);
    }
    slowest = text.isEmpty() ? 0 : Math.max(slowest, nanos - last);
    text.append(c);
    last = nanos;
  }

  /** The end came: true if what stood before it is a scan. */
  boolean isScan(long nanos) {
    return goesOn(nanos) && text.length() >= LEAST;
  }

  /** The end came: true if what stood before it is as short as a dish, and too fast for a hand. */
  boolean isShortScan(long nanos) {
    return goesOn(nanos)
        && text.length() < LEAST
        && Math.max(slowest, nanos - last) <= MOST_BETWEEN_SHORT_NANOS;
  }

  /** What came so far. */
  String text() {
    return text.toString();
  }

  void clear() {
    text.setLength(0);
  }
}
