package org.siltbench.station.window.desk;

import org.siltbench.station.work.scan.BagScan;

/** Takes scans of bags while its screen is in front. */
public interface ScanTaker {

  /**
   * A bag was scanned and can be trusted.
   *
   * @return false if this screen has no use for a bag
   */
  boolean scanned(BagScan bag);

  /**
   * Something else was scanned: a dish number, a sample number.
   *
   * @return false if this screen has no use for it; then the person is told that it is no bag
   */
  default boolean scannedOther(String text) {
    return false;
  }

  /**
   * A balance types into this screen now: its quick lines are no scans, they go where the cursor
   * is.
   */
  default boolean balanceTypes() {
    return false;
  }
}
