package org.siltbench.station.work.correct;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum CorrectSays implements Code {
  NO_FIELD,
  STANDS,
  NOTHING_SET,
  NO_ENTRY,
  SAME,
  NOT_FITTING,
  NOT_LISTED,
  NO_ROLE,
  NONE_NAMED,
  NOT_HELD,
  REASON,
  VOLUMES,
  NO_SWAP,
  SAME_ID,
  NOTHING_TO_SWAP,
  FIELD_MASS,
  FIELD_DECIMAL,
  FIELD_VOLUME,
  FIELD_PORTIONS,
  FIELD_WHOLE,
  FIELD_FLAG,
  FIELD_TIME,
  FIELD_PLAN,
  FIELD_FILTER,
  FIELD_ROLE,
  FIELD_TEXT,
  BOTH_SET,
  LEFT_ALONE,
  MORE_LEFT
}
