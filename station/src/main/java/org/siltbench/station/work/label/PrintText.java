package org.siltbench.station.work.label;

import org.siltbench.labels.print.PrintOutcome;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** How printing ended, in words. */
public final class PrintText {

  private PrintText() {}

  /** In words; empty where the queue took it. */
  public static Words of(PrintOutcome outcome) {
    if (outcome instanceof PrintOutcome.Waits waits) {
      Words why = Said.of(LabelSays.valueOf("WHY_" + waits.why().name()));
      return Said.of(LabelSays.PRINTER, waits.queue(), why, Elsewhere.words(waits.next()));
    }
    if (outcome instanceof PrintOutcome.Gone gone) {
      return Said.of(
          LabelSays.PRINTER,
          gone.queue(),
          Elsewhere.words(gone.what()),
          Elsewhere.words(gone.next()));
    }
    return Words.verbatim("");
  }
}
