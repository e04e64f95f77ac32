package org.siltbench.station.ledger;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum LedgerSays implements Code {
  LOCK_HELD,
  TOO_MUCH
}
