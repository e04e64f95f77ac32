package org.siltbench.labels.print;

import org.siltbench.calc.reason.Reason;

/** How an attempt to print ended. The mass is safe in every case; what differs is the paper. */
public sealed interface PrintOutcome {

  /** The queue took the job and is working. */
  record Sent(String queue, int pages) implements PrintOutcome {}

  /** Nothing was sent: the queue is there but stands still. The label waits. */
  record Waits(String queue, Why why, Reason next) implements PrintOutcome {}

  /** Nothing was sent: there is no such queue, or it refused. The label waits. */
  record Gone(String queue, Reason what, Reason next) implements PrintOutcome {}

  /** Why a queue stands still. */
  enum Why {
    OUT_OF_PAPER,
    PAUSED,
    OFFLINE,
    JAMMED,
    REJECTING,
    OTHER
  }
}
