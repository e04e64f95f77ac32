package org.siltbench.station.work.exchange;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum ExchangeSays implements Code {
  TOO_LARGE,
  NO_FILE,
  SPREADSHEET,
  CHARSET,
  NO_HEAD,
  DOUBTS,
  MEMORY_DAMAGED,
  ANSWER,
  HOW_KEY,
  HOW_WORDS,
  HOW_CHARSET,
  HOW_SKIP,
  HOW_UNITS,
  HOW_COLUMN,
  TOO_LONG,
  OWN_SUFFIX,
  OWN_UNREADABLE,
  OWN_WRONG,
  OWN_EXISTS,
  OWN_NONE
}
