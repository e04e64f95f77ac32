package org.siltbench.station.work.scan;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.calc.id.Scan;
import org.siltbench.station.Problem;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Weighed;

/**
 * A scan that can be trusted: a bare filter ID or a whole bag code.
 *
 * @param filter which filter
 * @param code what the bag says, if its code was scanned
 * @param hint what the person should know although it can be trusted, or empty
 */
public record BagScan(FilterId filter, Optional<BagCode> code, String hint) {

  /**
   * Understands an entry.
   *
   * @throws Problem.Refused if it cannot be trusted as it stands, with the reason
   */
  public static BagScan of(String entered) {
    Scan scan = Scan.of(entered);
    BagScan direct = trusted(scan, "");
    if (direct != null) {
      return direct;
    }
    if (scan instanceof Scan.OtherLayout other && other.repaired() != null) {
      BagScan repaired = trusted(other.repaired(), other.message());
      if (repaired != null) {
        return repaired;
      }
    }
    throw new Problem.Refused(
        "\"" + shown(entered) + "\" is no filter of this bench: " + scan.message(),
        "Nothing was recorded.",
        "Scan the bag again, or type the ID printed under the code.");
  }

  private static @Nullable BagScan trusted(Scan scan, String hint) {
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
  public String compare(FilterState state) {
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
      return "The bag carries an older label ("
          + bag.grams()
          + " g); the mass in force is "
          + now.digits()
          + " g.";
    }
    throw new Problem.Refused(
        "The bag of " + filter + " says " + bag.grams() + " g, the ledger " + now.digits() + " g.",
        "Nothing was recorded.",
        "Check whether the pre-weigh mass was corrected or the bag belongs to another lab; correct"
            + " it or reprint the label first.");
  }
}
