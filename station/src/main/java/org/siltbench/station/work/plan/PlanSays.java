package org.siltbench.station.work.plan;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum PlanSays implements Code {
  NO_PLAN,
  NO_ADVICE
}
