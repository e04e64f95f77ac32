package org.siltbench.station.work.weigh;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum WeighSays implements Code {
  UNIT,
  NOT_CLOSED,
  SPEC_UNUSABLE,
  UNREACHABLE,
  PRACTICE_ONLY,
  CABLE_AWAY,
  SILENT,
  NO_SPEC,
  NOT_OPENED,
  MOISTURE,
  DRIFT,
  DISTURBED,
  OUTSIDE_WINDOW,
  TIMEOUT,
  LOAD_NOTED,
  LOAD_WEIGHT,
  LOAD_LOOSE,
  DISH,
  SENDS_NO_MORE
}
