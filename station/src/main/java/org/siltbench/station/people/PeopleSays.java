package org.siltbench.station.people;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum PeopleSays implements Code {
  PIN_LENGTH,
  NOBODY,
  NO_SUPERVISOR_LEFT,
  TOO_MANY_PINS,
  NOT_LET_IN,
  NO_INITIALS,
  FILE_DAMAGED,
  FILE_UNUSABLE,
  SUPERVISE_NEEDED,
  RIGHT_NEEDED
}
