package org.siltbench.station.bench;

import java.io.IOException;
import org.siltbench.station.Problem;

/** What a lab says of its disk, for tests of those who show it. */
public final class LabTroubles {

  private LabTroubles() {}

  /** A write that failed and was taken back. */
  public static Problem.Outside writing(IOException e) {
    return DiskTrouble.writing(true, e);
  }
}
