package org.siltbench.station.work.calculate;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum CalculateSays implements Code {
  NOT_CALCULATED
}
