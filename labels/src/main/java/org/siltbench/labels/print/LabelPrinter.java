package org.siltbench.labels.print;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Reason;
import org.siltbench.labels.Imprint;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.Papers;
import org.siltbench.labels.PapersSay;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.print.PrintOutcome.Why;

/** Prints labels on a queue of this system at their exact size. */
public final class LabelPrinter {

  private static final OffsetDateTime NO_DATE = OffsetDateTime.parse("2000-01-01T00:00:00Z");

  private LabelPrinter() {}

  /** The queues this system knows; none where there is no print system. */
  public static List<String> queues() {
    return Lp.isInstalled() ? queues(Lp.HERE) : JavaPrint.queues();
  }

  static List<String> queues(Lp lp) {
    Lp.Said said = lp.run(List.of("lpstat", "-e"));
    return said.ok() ? said.text().lines().filter(line -> !line.isBlank()).toList() : List.of();
  }

  /**
   * Asks the queue's state, then sends the run; one label or many. Nothing is sent to a queue that
   * stands still: what it took would come out later, twice.
   *
   * @throws PaperProblem if the labels cannot be drawn on this stock
   */
  public static PrintOutcome print(String queue, LabelRun run) {
    return Lp.isInstalled() ? print(Lp.HERE, queue, run) : JavaPrint.print(queue, run);
  }

  static PrintOutcome print(Lp lp, String queue, LabelRun run) {
    PrintOutcome standing = standing(lp, queue);
    return standing == null ? send(lp, queue, run) : standing;
  }

  /** Why nothing can be sent to a queue now; null where it works. */
  static @Nullable PrintOutcome standing(Lp lp, String queue) {
    if (queue.isBlank() || queue.startsWith("-")) {
      return new PrintOutcome.Gone(queue, PapersSay.NO_QUEUE_NAME.with(), known(lp));
    }
    Lp.Said printer = lp.run(List.of("lpstat", "-l", "-p", queue));
    if (!printer.ok() || !printer.text().contains("printer " + queue + " ")) {
      return new PrintOutcome.Gone(queue, PapersSay.NO_QUEUE.with(queue), known(lp));
    }
    Lp.Said accepting = lp.run(List.of("lpstat", "-a", queue));
    Why why = QueueState.standsStill(printer.text(), accepting.text());
    return why == null ? null : new PrintOutcome.Waits(queue, why, QueueState.next(why));
  }

  private static Reason known(Lp lp) {
    List<String> queues = queues(lp);
    return queues.isEmpty()
        ? PapersSay.NO_QUEUES.with()
        : PapersSay.QUEUES.with(String.join(", ", queues));
  }

  private static PrintOutcome send(Lp lp, String queue, LabelRun run) {
    try {
      Path pdf = Files.createTempFile("labels", ".pdf");
      try {
        try (OutputStream out = Files.newOutputStream(pdf)) {
          draw(run, out);
        }
        Lp.Said said = lp.run(Lp.printing(queue, size(run.media()), pdf));
        return said.ok()
            ? new PrintOutcome.Sent(queue, pages(run))
            : new PrintOutcome.Gone(
                queue, Reason.plain(said.text()), PapersSay.CHECK_PRINTER.with());
      } finally {
        Files.delete(pdf);
      }
    } catch (IOException e) {
      return new PrintOutcome.Gone(
          queue, PapersSay.NO_TEMPORARY_FILE.with(e), PapersSay.MAKE_ROOM.with());
    }
  }

  static void draw(LabelRun run, OutputStream out) throws IOException {
    boolean practice = run.labels().stream().anyMatch(label -> label.practice());
    Imprint imprint = new Imprint("labels", "", null, 0, NO_DATE, practice, Imprint.PageSize.A4);
    Papers.labels(run, imprint, out);
  }

  static int pages(LabelRun run) {
    int labels = run.labels().size() * (run.slip() ? 2 : 1) + run.startAt() - 1;
    int perPage = run.media().perPage();
    return (labels + perPage - 1) / perPage;
  }

  /** The stock's size in the words of IPP's custom media (PWG 5101.1). */
  static String size(Media media) {
    return "Custom." + mm(media.pageWidth()) + "x" + mm(media.pageHeight()) + "mm";
  }

  private static String mm(double length) {
    return BigDecimal.valueOf(length)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
