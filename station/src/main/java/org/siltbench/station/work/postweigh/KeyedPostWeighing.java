package org.siltbench.station.work.postweigh;

import org.siltbench.station.bench.Bench;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.scan.BagScan;
import org.siltbench.station.work.weigh.Measured;

/** Masses of loaded filters typed in from a display; marked keyed for good, under all rules. */
public final class KeyedPostWeighing {

  private final PostRecord record;
  private final PostWeighSettings settings;

  public KeyedPostWeighing(Bench bench, MethodBook methods, PostWeighSettings settings) {
    this.record = new PostRecord(bench, methods, settings);
    this.settings = settings;
  }

  /**
   * Records one mass.
   *
   * @param entered the filter ID or bag code
   * @param grams the digits that were typed twice alike
   * @throws org.siltbench.station.Problem.Refused if a rule says no; nothing is written then
   */
  public PostWeighReport.Done record(String entered, String grams) {
    BagScan bag = BagScan.of(entered);
    record.admit(bag);
    return record.record(bag, Measured.keyed(grams, settings.balance(), settings.at()));
  }
}
