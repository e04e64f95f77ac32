package org.siltbench.labels.print;

import java.nio.file.Path;
import java.util.List;
import org.siltbench.calc.reason.Reason;
import org.siltbench.labels.PapersSay;

/** Prints a PDF of whole pages on a queue of this system. */
public final class PagePrinter {

  private PagePrinter() {}

  /**
   * Asks the queue's state, then sends the file. Nothing is sent to a queue that stands still.
   *
   * @param title what the queue calls it
   */
  public static PrintOutcome print(String queue, Path pdf, String title) {
    return print(Lp.HERE, queue, pdf, title);
  }

  static PrintOutcome print(Lp lp, String queue, Path pdf, String title) {
    if (!Lp.isInstalled()) {
      return new PrintOutcome.Gone(
          queue, PapersSay.NO_PRINT_COMMAND.with(), PapersSay.PRINT_BY_HAND.with());
    }
    PrintOutcome standing = LabelPrinter.standing(lp, queue);
    if (standing != null) {
      return standing;
    }
    Lp.Said said =
        lp.run(List.of("lp", "-d", queue, "-t", title, "-o", "media=A4", "--", pdf.toString()));
    return said.ok()
        ? new PrintOutcome.Sent(queue, 1)
        : new PrintOutcome.Gone(queue, Reason.plain(said.text()), PapersSay.CHECK_PRINTER.with());
  }
}
