package org.siltbench.station.work.receipt;

import java.util.List;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.said.Words;

/**
 * What came back against what went out.
 *
 * @param accepted lines that can be taken in, with what to know about each
 * @param already lines that were taken in before, word for word
 * @param refused lines that cannot be taken in
 * @param unused filters on the table with nothing written beside them
 * @param bagsWithoutNotes bags scanned on return that no line mentions
 * @param missing filters issued to the same trips that neither a line nor a scan mentions
 * @param warnings what does not fit together
 */
public record Reconciliation(
    List<Accepted> accepted,
    List<String> already,
    List<Refused> refused,
    List<String> unused,
    List<String> bagsWithoutNotes,
    List<String> missing,
    List<Warning> warnings) {

  /** A line taken in. */
  public record Accepted(ReceiptRow row, String batch, String role, String trip, Words hint) {}

  /**
   * Something that does not fit together.
   *
   * @param filter the filter it is about; empty where it is about a sample or a pair
   * @param what what it is
   */
  public record Warning(String filter, Words what) {}

  /** Why a line was not taken in. */
  public enum Kind {
    UNKNOWN("unknown"),
    NOTES_WITHOUT_BAG("notes-without-bag"),
    TWO_NOTES("two-notes"),
    STATUS("status"),
    BAG_MASS("bag-mass");

    private final String code;

    Kind(String code) {
      this.code = code;
    }

    /** The stable word for scripts. */
    public String code() {
      return code;
    }
  }

  /** A line not taken in. */
  public record Refused(long line, String filter, Kind kind, Words words) {

    /** Why. */
    public String why() {
      return words.english();
    }
  }

  /**
   * What was written.
   *
   * @param found the reconciliation
   * @param written the entries, in order; empty if nothing was recorded
   */
  public record Done(Reconciliation found, List<Entry> written) {}

  /** Copies the lists. */
  public Reconciliation {
    accepted = List.copyOf(accepted);
    already = List.copyOf(already);
    refused = List.copyOf(refused);
    unused = List.copyOf(unused);
    bagsWithoutNotes = List.copyOf(bagsWithoutNotes);
    missing = List.copyOf(missing);
    warnings = List.copyOf(warnings);
  }
}
