package org.siltbench.station.table;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum TableSays implements Code {
  SAME_NAME,
  NO_COLUMN_FOR_CELL,
  CELL,
  LINE,
  NO_FILE,
  EMPTY,
  TOO_WIDE,
  NO_COLUMN,
  UNREADABLE,
  MALFORMED,
  NOT_UTF8,
  PLACE,
  PLACE_NAMED,
  WITH_POINT,
  FROM_TO
}
