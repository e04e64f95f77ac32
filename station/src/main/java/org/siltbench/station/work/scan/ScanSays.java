package org.siltbench.station.work.scan;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum ScanSays implements Code {
  NO_BAG,
  OTHER_MASS,
  UNREADABLE,
  NO_PICTURE,
  NO_CODE,
  OLDER_LABEL,
  WRONG_CHECK,
  BAG_NOT_WHOLE,
  DAMAGED,
  OTHER_LAYOUT,
  REPAIRED
}
