package org.siltbench.station.work.receipt;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum ReceiptSays implements Code {
  BAG_NOTES,
  BAG,
  TOO_LONG,
  VOLUME_COLUMN,
  LINE,
  NOTES,
  IN_THE_NOTES,
  FILTER_ID,
  RANGE,
  UNCERTAINTY,
  PLAIN_NUMBER,
  VOLUME,
  VOLUMES,
  ABOVE_ZERO,
  LITRES,
  TOO_MUCH,
  WHOLE,
  ROLE,
  NUMBER,
  AFTER_COLLECTED,
  AFTER_BEGIN,
  PAST,
  LEFT,
  ONE_OF,
  CONDITIONS,
  TEXT,
  BOTH_VOLUMES,
  LEFT_ALONE,
  SAND,
  PAIR_KIND,
  UNKNOWN,
  TWO_LINES,
  NO_BAG,
  BOTH
}
