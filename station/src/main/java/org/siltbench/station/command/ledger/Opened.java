package org.siltbench.station.command.ledger;

import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.command.Session;

/** The lab as a folder of ledgers. */
final class Opened {

  private Opened() {}

  static OpenLab lab(Session session) {
    return session.existingBench();
  }
}
