package org.siltbench.station.command.ledger;

import org.siltbench.station.Problem;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.command.Session;

/** The lab as a folder of ledgers. */
final class Opened {

  private Opened() {}

  static OpenLab lab(Session session) {
    if (session.existingBench() instanceof OpenLab lab) {
      return lab;
    }
    throw new Problem.WrongUse("This lab has no folder of ledgers.", "Name another with --lab.");
  }
}
