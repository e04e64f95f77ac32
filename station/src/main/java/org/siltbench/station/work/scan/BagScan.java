package org.siltbench.station.work.scan;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.calc.id.Scan;
import org.siltbench.station.Problem;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * A scan that can be trusted: a bare filter ID or a whole bag code.
 *
 * @param filter which filter
 * @param code what the bag says, if its code was scanned
 * @param hint what the person should know although it can be trusted, or empty
 */
public record BagScan(FilterId filter, Optional<BagCode> code, Words hint) {

  /**
   * Understands an entry.
   *
   * @throws Problem.Refused if it cannot be trusted as it stands, with the reason
   */
  public static BagScan of(String entered) {
    Scan scan = Scan.of(entered);
    BagScan direct = trusted(scan, Words.none());
    if (direct != null) {
      return direct;
    }
    if (scan instanceof Scan.OtherLayout other && other.repaired() != null) {
      BagScan repaired = trusted(other.repaired(), ScanWords.of(other));
      if (repaired != null) {
        return repaired;
      }
    }
    throw new Problem.Refused(ScanSays.NO_BAG, shown(entered), ScanWords.of(scan));
  }

  private static @Nullable BagScan trusted(Scan scan, Words hint) {
    if (scan instanceof Scan.Bag bag) {
      return new BagScan(bag.code().filter(), Optional.of(bag.code()), hint);
    }
    FilterId bare = scan.filterOrNull();
    return bare == null ? null : new BagScan(bare, Optional.empty(), hint);
  }

  private static String shown(String entered) {
    String line = entered.strip();
    return line.length() > 40 ? line.substring(0, 40) + "…" : line;
  }

  /**
   * Compares the bag's own copy of the pre-weigh mass with the ledger's.
   *
   * @return what the person should know: an older label whose mass was in force once; else empty
   * @throws Problem.Refused if the bag says a mass that was never in force for this filter
   */
  public Words compare(FilterState state) {
    if (code.isEmpty() || state.preMass().isEmpty()) {
      return hint;
    }
    BagCode bag = code.get();
    Weighed now = state.preMass().get();
    if (now.mass().equals(bag.mass())) {
      return hint;
    }
    boolean older = state.pre().stream().anyMatch(w -> w.mass().equals(bag.mass()));
    if (older) {
      return Said.of(ScanSays.OLDER_LABEL, bag.grams(), now.digits());
    }
    throw new Problem.Refused(ScanSays.OTHER_MASS, filter, bag.grams(), now.digits());
  }
}
