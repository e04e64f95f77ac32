package org.siltbench.station.work.results;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum ResultsSays implements Code {
  NOT_CALCULATED,
  CONSTANT,
  NO_RESULT,
  STOPPED
}
