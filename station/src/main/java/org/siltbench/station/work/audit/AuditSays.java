package org.siltbench.station.work.audit;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum AuditSays implements Code {
  NO_LIMIT,
  LIMIT_TOO_LOW,
  NO_MASS,
  NOT_WEIGHED,
  OUT_OF_BAG
}
