package org.siltbench.station.ledger;

/**
 * How far a ledger has been read: what lies before is known and need not be read again.
 *
 * @param bench whose ledger
 * @param end offset after the newline of the last entry read
 * @param lastAt offset of the last entry read
 * @param seq its place; 0 where nothing was read
 * @param sum its hash
 * @param hlc its clock value
 * @param trouble what stops writing, or empty
 */
public record Position(
    String bench, long end, long lastAt, long seq, String sum, Hlc hlc, String trouble) {

  /** The start of a ledger. */
  public static Position start(String bench) {
    return new Position(bench, 0, 0, 0, LineText.NO_HASH, new Hlc(0, 0), "");
  }

  Position after(Line line) {
    Entry entry = line.entry();
    return new Position(
        bench, line.end(), line.at(), entry.ref().seq(), line.sum(), entry.hlc(), trouble);
  }

  Position past(long offset, String why) {
    return new Position(bench, offset, lastAt, seq, sum, hlc, trouble.isEmpty() ? why : trouble);
  }
}
