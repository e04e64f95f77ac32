package org.siltbench.station.window.connect;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum ConnectSays implements Code {
  NO_FORMAT_NAME,
  TYPED_BY_COMMAND,
  FIND_FAILED,
  FIND_STOPPED
}
