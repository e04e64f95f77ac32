package org.siltbench.station.window;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum WindowSays implements Code {
  PRACTICE_NOT_STARTED
}
