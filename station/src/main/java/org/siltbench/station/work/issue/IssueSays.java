package org.siltbench.station.work.issue;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum IssueSays implements Code {
  FEWER_THAN_NONE,
  NO_TRIP,
  NONE_READY,
  NOT_CONSTANT,
  OTHER_BATCH,
  NONE_OUT,
  OTHER_TRIP
}
