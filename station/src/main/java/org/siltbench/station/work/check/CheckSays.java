package org.siltbench.station.work.check;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum CheckSays implements Code {
  NO_REST,
  NO_WEIGHT,
  NOTHING,
  NO_PHASE,
  NOT_CHECKED,
  LAST_FAILED,
  BRACKET_DUE,
  BRACKET_OVER,
  CHECK_FAILED,
  NO_CERTIFICATE,
  OVERDUE,
  STOPPED,
  WEIGH_ON,
  HAS_PASSED,
  SAID_ALREADY
}
