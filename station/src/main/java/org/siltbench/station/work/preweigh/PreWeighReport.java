package org.siltbench.station.work.preweigh;

import java.util.List;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.weigh.Measured;

/**
 * What a pre-weighing came to.
 *
 * @param weighings masses that count, on the disk
 * @param repeats masses for repeatability, on the disk
 * @param refused loads that were not recorded
 * @param left filters of the batch that still need a mass
 * @param ended why it stopped before the end, or empty
 */
public record PreWeighReport(
    List<Done> weighings, List<Done> repeats, List<Refusal> refused, int left, Words ended) {

  /** One recorded mass. */
  public record Done(String filter, Measured measured, Entry entry) {}

  /** One load that was not recorded. */
  public record Refusal(String filter, String why) {}

  /** Copies the lists. */
  public PreWeighReport {
    weighings = List.copyOf(weighings);
    repeats = List.copyOf(repeats);
    refused = List.copyOf(refused);
  }

  /** Why it stopped before the end, or empty. */
  public String stopped() {
    return ended.english();
  }
}
