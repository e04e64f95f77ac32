package org.siltbench.station.work;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum WorkSays implements Code {
  NO_NAME,
  NO_SPAN,
  NO_TIME,
  FUTURE,
  NO_NUMBER,
  MISSING,
  NOT_WHOLE,
  NO_DATE,
  NAME_BENCH,
  NAME_LOT,
  NAME_TRIP,
  NAME_PERSON,
  NAME_WEIGHT,
  NAME_BALANCE,
  NAME_BATCH
}
