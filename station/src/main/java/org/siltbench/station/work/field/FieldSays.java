package org.siltbench.station.work.field;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum FieldSays implements Code {
  NONE_READY,
  NONE_OUT
}
