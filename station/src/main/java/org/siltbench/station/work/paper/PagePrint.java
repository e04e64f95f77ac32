package org.siltbench.station.work.paper;

import java.nio.file.Path;
import org.siltbench.labels.print.PagePrinter;
import org.siltbench.labels.print.PrintOutcome;
import org.siltbench.station.Problem;
import org.siltbench.station.work.label.PrintText;

/** Sends a paper that was written to a queue. */
public final class PagePrint {

  private PagePrint() {}

  /**
   * Prints a PDF.
   *
   * @throws Problem.Outside if the queue does not take it; the file stays
   */
  public static void print(String queue, Path pdf, String title) {
    PrintOutcome outcome = PagePrinter.print(queue, pdf, title);
    if (!(outcome instanceof PrintOutcome.Sent)) {
      throw new Problem.Outside(null, PaperSays.PAPER_WAITS, PrintText.of(outcome), pdf);
    }
  }
}
