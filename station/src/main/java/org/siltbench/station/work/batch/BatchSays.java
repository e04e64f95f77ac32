package org.siltbench.station.work.batch;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum BatchSays implements Code {
  NO_BATCH,
  SEVERAL,
  NO_FILTERS,
  TOO_MANY_ROLES,
  TOO_MANY_DUPLICATES,
  EXISTS,
  CODES_USED_UP,
  TOO_LARGE
}
