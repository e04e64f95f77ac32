package org.siltbench.station.work.drying;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum DryingSays implements Code {
  TWO_IN_DISH,
  ENDED,
  NOT_INSIDE,
  TOO_EARLY,
  NONE_NAMED,
  NO_PURPOSE,
  NO_IGNITION,
  COOLING,
  STALE,
  NOT_DRIED,
  STILL_IN,
  NO_CYCLE,
  NONE_RUNNING,
  SEVERAL_RUNNING,
  IN_OVEN,
  JOINS_ENDED,
  JOINS_OTHER,
  WET,
  OUT_OF_RANGE,
  NO_TEMPERATURE,
  WEIGHED_AFTER,
  MANY
}
