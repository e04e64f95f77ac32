package org.siltbench.station.work.label;

import org.siltbench.labels.print.PrintOutcome;

/** How printing ended, in words. */
public final class PrintText {

  private PrintText() {}

  /** In words; empty where the queue took it. */
  public static String of(PrintOutcome outcome) {
    if (outcome instanceof PrintOutcome.Waits waits) {
      String why = waits.why().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
      return "Printer " + waits.queue() + ": " + why + ". " + waits.next();
    }
    if (outcome instanceof PrintOutcome.Gone gone) {
      return "Printer " + gone.queue() + ": " + gone.what() + ". " + gone.next();
    }
    return "";
  }
}
