package org.siltbench.station.work.method;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum MethodSays implements Code {
  FOLDER_UNREADABLE,
  TOO_LARGE,
  FILE_WRONG,
  FILE_UNREADABLE,
  NO_METHOD,
  CHANGED,
  NO_KEY,
  EXISTS,
  FOLDER_NOT_MADE,
  NUMBERS_WRONG
}
