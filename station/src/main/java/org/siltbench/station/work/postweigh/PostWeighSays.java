package org.siltbench.station.work.postweigh;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum PostWeighSays implements Code {
  TOO_LIGHT,
  MOISTURE,
  NONE_WAITING,
  NOTHING_FOR_IT,
  WRONG_BAG,
  STOPPED,
  DISH_AMBIGUOUS,
  DISH_HOLDS,
  DISH_OTHER,
  DISH_ALONE,
  BAG_ALONE
}
