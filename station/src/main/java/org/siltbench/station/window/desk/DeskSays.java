package org.siltbench.station.window.desk;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum DeskSays implements Code {
  NOT_KEPT,
  SUPERVISOR_ONLY,
  WEIGHER_ONLY,
  NOBODY_SIGNED_ON,
  PAN_IN_USE,
  UNEXPECTED
}
