package org.siltbench.station.work.equip;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum EquipSays implements Code {
  BELOW_ZERO,
  DUE_BEFORE,
  NOTHING_NOTED,
  NOT_POSSIBLE,
  CERTIFIED_NOT_FITTING,
  CERTIFICATE
}
