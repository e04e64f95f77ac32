package org.siltbench.station.ledger;

/**
 * One line as it stands in a file.
 *
 * @param entry what it says
 * @param at offset of its first byte
 * @param length bytes without the newline
 * @param prev the hash of the line before
 * @param sum its own hash
 * @param part which line of its act it is
 */
public record Line(Entry entry, long at, int length, String prev, String sum, ActPart part) {

  /** The offset after its newline. */
  public long end() {
    return at + length + 1;
  }
}
