package org.siltbench.station.ledger;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum LedgerSays implements Code {
  LOCK_HELD,
  TOO_MUCH,
  NOTE_MIRROR_ASIDE,
  NOTE_TORN_ASIDE,
  BAD_OTHER_BENCH,
  BAD_NOT_FOLLOWING,
  BAD_ACT,
  BAD_FIELDS,
  BAD_PLACE,
  BAD_JSON,
  BAD_END,
  BAD_HASH,
  BAD_TIME,
  BAD_CLOCK,
  BAD_DATA,
  BAD_FLAG,
  BAD_NUMBER,
  BAD_TEXT,
  BAD_FORM,
  BAD_PREV,
  BAD_NEWER,
  FOUND_DAMAGED,
  FOUND_BENCH,
  FOUND_EXPECTED,
  FOUND_CHANGED,
  FOUND_CLOCK,
  FOUND_ACT,
  FOUND_PAST
}
