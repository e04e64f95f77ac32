package org.siltbench.labels.print;

import java.util.List;
import org.siltbench.labels.label.LabelRun;

/** Prints labels on a queue of this system at their exact size. */
public final class LabelPrinter {

  private LabelPrinter() {}

  /** The queues this system knows. */
  public static List<String> queues() {
    throw new UnsupportedOperationException();
  }

  /** Asks the queue's state, then sends the run; one label or many. */
  public static PrintOutcome print(String queue, LabelRun run) {
    throw new UnsupportedOperationException(queue + run.dpi());
  }
}
