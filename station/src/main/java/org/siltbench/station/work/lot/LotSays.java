package org.siltbench.station.work.lot;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum LotSays implements Code {
  NO_FILTERS,
  NO_LIMIT,
  NO_AREA,
  NO_DIAMETER,
  NO_LOT,
  BURNS,
  NOT_MUFFLED,
  EMPTY_WINDOW,
  WINDOW_MASS,
  NO_WINDOW,
  NOT_POSSIBLE,
  EXISTS
}
