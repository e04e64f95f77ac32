package org.siltbench.station.register;

import org.siltbench.station.said.Code;

/** What the register notes; the sentences stand in the bundle {@code says} beside it. */
enum RegisterSays implements Code {
  NO_SENSE,
  NOT_LISTED
}
