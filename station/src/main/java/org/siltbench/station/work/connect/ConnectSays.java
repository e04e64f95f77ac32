package org.siltbench.station.work.connect;

import org.siltbench.station.said.Code;

/** What the search for a balance and the lesson of its format can say. */
public enum ConnectSays implements Code {
  PASSED_OVER,
  NOTHING,
  READABLE,
  ODD_BYTES,
  WITH,
  READS_AS_IT_IS,
  READABLE_LINES,
  NO_PORT,
  NONE_OPENED,
  NOTHING_HEARD,
  PRESS_ITS_KEY,
  NO_LINES,
  STOPPED,
  UNKNOWN,
  NOT_READ
}
