package org.siltbench.station.work.postweigh;

import java.util.List;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.weigh.Measured;

/**
 * What a post-weighing came to.
 *
 * @param weighings masses on the disk
 * @param refused scans or loads that were not recorded
 * @param left filters expected that were not weighed
 * @param ended why it stopped before the end of the scans, or empty
 */
public record PostWeighReport(
    List<Done> weighings, List<Refusal> refused, List<String> left, Words ended) {

  /**
   * One recorded mass.
   *
   * @param filter the filter
   * @param measured the mass
   * @param verdict constant, dry again, not tested, unknown
   * @param decision true when the method's number of dryings is used up
   * @param entry the ledger entry
   */
  public record Done(
      String filter, Measured measured, ConstantVerdict verdict, boolean decision, Entry entry) {}

  /** One scan or load that was not recorded. */
  public record Refusal(String filter, String why) {}

  /** Copies the lists. */
  public PostWeighReport {
    weighings = List.copyOf(weighings);
    refused = List.copyOf(refused);
    left = List.copyOf(left);
  }

  /** Why it stopped before the end, or empty. */
  public String stopped() {
    return ended.english();
  }
}
