package org.siltbench.station.elsewhere;

import org.siltbench.station.said.Code;

/** What the system says most often about files, in a person's language. */
public enum SystemSays implements Code {
  DISK_FULL,
  NO_PERMISSION,
  NO_FILE,
  FILE_EXISTS,
  NO_FOLDER,
  NOT_TEXT,
  NO_CONNECTION,
  TIMED_OUT
}
