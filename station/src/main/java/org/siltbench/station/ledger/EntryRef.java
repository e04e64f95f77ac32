package org.siltbench.station.ledger;

/**
 * Names one entry of one ledger.
 *
 * @param bench the bench's 4-character code
 * @param seq its place in that bench's ledger, from 1
 */
public record EntryRef(String bench, long seq) {

  /** Reads {@code BENCH/SEQ}. */
  public static EntryRef parse(String text) {
    int slash = text.indexOf('/');
    if (slash < 1) {
      throw new IllegalArgumentException("an entry is named BENCH/SEQ, not \"" + text + '"');
    }
    try {
      return new EntryRef(text.substring(0, slash), Long.parseLong(text.substring(slash + 1)));
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("an entry is named BENCH/SEQ, not \"" + text + '"', e);
    }
  }

  @Override
  public String toString() {
    return bench + '/' + seq;
  }
}
