package org.siltbench.station.work.preweigh;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum PreWeighSays implements Code {
  OTHER_BAG,
  NO_PRACTICE_LAB,
  NO_MASS,
  NOT_POSSIBLE,
  HAS_MASS,
  OUTSIDE_WINDOW,
  MEANWHILE,
  CYCLE_OPEN,
  NOT_COOLED,
  TOO_COARSE,
  COUNT,
  REPEAT,
  LOT_NOT_DRIED,
  DRY_FIRST,
  ONCE_MORE,
  LOT_UNDRIED,
  IN_A_ROW,
  LOT_WINDOW
}
