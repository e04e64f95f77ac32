package org.siltbench.station.work.release;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum ReleaseSays implements Code {
  CHANGED_MEANWHILE,
  NO_RESULTS,
  NOT_CHANGED,
  NOT_FINISHED,
  HELD,
  AGAINST,
  NUMBER_USED,
  OPEN_FILTER
}
