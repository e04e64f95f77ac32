package org.siltbench.station.bench;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum BenchSays implements Code {
  FOLDER_NOT_WRITABLE,
  FOLDER_NOT_OPENED,
  NEARLY_FULL,
  REGISTER_DAMAGED,
  IS_LAB_ALREADY,
  RESTORE_INTO_LAB,
  NO_LAB,
  KEY_UNUSABLE,
  NOT_TAKEN_IN,
  LEDGER_UNREADABLE,
  NO_HASH,
  DISK_FULL,
  DISK_FULL_UNSURE,
  DISK_FAILED,
  DISK_FAILED_UNSURE,
  NOT_WRITABLE
}
