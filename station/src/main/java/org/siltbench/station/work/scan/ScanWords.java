package org.siltbench.station.work.scan;

import org.siltbench.calc.id.Scan;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** What is wrong with a scan, in the person's language. */
final class ScanWords {

  private ScanWords() {}

  static Words of(Scan scan) {
    String english = scan.message();
    if (scan instanceof Scan.WrongCheck wrong && wrong.which() == Scan.Which.BAG_CODE) {
      String id = wrong.filter() == null ? "?" : wrong.filter().grouped();
      return Said.of(ScanSays.BAG_NOT_WHOLE, english, id);
    }
    if (scan instanceof Scan.WrongCheck) {
      return Said.of(ScanSays.WRONG_CHECK, english);
    }
    if (scan instanceof Scan.OtherLayout other) {
      ScanSays code = other.repaired() == null ? ScanSays.OTHER_LAYOUT : ScanSays.REPAIRED;
      return Said.of(code, english, other.layout());
    }
    return scan instanceof Scan.Damaged
        ? Said.of(ScanSays.DAMAGED, english)
        : Words.verbatim(english);
  }
}
