package org.siltbench.station.work.preweigh;

import org.siltbench.station.ledger.Entry;
import org.siltbench.station.work.weigh.PanWatch;

/** What follows a recorded mass before the next filter: its label, its bag scanned closed. */
public interface AfterRecord {

  /** Nothing. */
  AfterRecord NOTHING = (filter, entry, pan) -> {};

  /** Does it; the pan is still watched while it waits for a person. */
  void done(String filter, Entry entry, PanWatch pan) throws InterruptedException;

  /** This, then another. */
  default AfterRecord then(AfterRecord next) {
    return (filter, entry, pan) -> {
      done(filter, entry, pan);
      next.done(filter, entry, pan);
    };
  }
}
