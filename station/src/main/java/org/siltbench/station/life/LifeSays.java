package org.siltbench.station.life;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum LifeSays implements Code {
  NO_FILTER,
  REFUSED,
  NO_MASS,
  NO_PRE_MASS,
  STAYS_IN_LAB,
  NOT_BACK,
  NOT_OUT,
  NOT_DRIED_SINCE,
  OUT_ALREADY,
  OUT,
  NO_RECORD_OF_RETURN,
  RECEIVED_BEFORE,
  NOT_DRIED,
  NOTHING_TO_REPEAT,
  NOT_CONSTANT,
  REJECTED_BEFORE,
  REJECTED,
  LOADED,
  NOT_IN_OVEN,
  WEIGHED_SINCE,
  UNFINISHED,
  REPORTED,
  STATUS_PLANNED,
  STATUS_PRE_WEIGHED,
  STATUS_ISSUED,
  STATUS_RECEIVED,
  STATUS_DRYING,
  STATUS_POST_WEIGHED,
  STATUS_CONSTANT,
  STATUS_REPORTED,
  STATUS_REJECTED
}
