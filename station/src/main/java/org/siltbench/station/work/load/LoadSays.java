package org.siltbench.station.work.load;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum LoadSays implements Code {
  UNREADABLE,
  TWO_UNITS,
  NO_DISCHARGE,
  NO_STEP,
  END_BEFORE,
  SHARED,
  NO_UNITS,
  NO_SITE,
  VALUE,
  SAME_TIME,
  NO_COMMON_TIME,
  NO_SAMPLE,
  NO_SAMPLE_AT,
  NOTE_EMPTY,
  NOTE_LEFT,
  NOTE_UNCERTAINTY,
  NOTE_PAIR,
  BOTH,
  NOTE_GAP,
  NOTE_OPEN,
  NOTE_NO_U,
  NOTE_NO_LOGARITHM,
  NOTE_FEW,
  NOTE_NO_CURVE,
  NOTE_FEW_FLOWS,
  NOTE_BEYOND,
  DISCHARGE,
  CONCENTRATION,
  A_TIME,
  A_DISCHARGE,
  A_UNCERTAINTY,
  A_CONCENTRATION
}
