package org.siltbench.station.work.label;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum LabelSays implements Code {
  NOT_CONSTANT,
  NO_CODE,
  NONE_DUE,
  OPTIONS,
  NO_ROLL,
  RESOLUTION,
  MEASURED,
  PRINTER,
  WHY_OUT_OF_PAPER,
  WHY_PAUSED,
  WHY_OFFLINE,
  WHY_JAMMED,
  WHY_REJECTING,
  WHY_OTHER,
  LABELS_WAIT
}
