package org.siltbench.station.command.weigh;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.media.MediaCatalog;
import org.siltbench.labels.print.LabelPrinter;
import org.siltbench.labels.print.PrintOutcome;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.label.BagLabels;
import org.siltbench.station.work.paper.PaperFile;
import org.siltbench.station.work.preweigh.AfterRecord;
import org.siltbench.station.work.weigh.PanWatch;

/**
 * Prints the label of the filter just weighed, one job a label. If that fails the label waits, the
 * mass is safe, and what waits is printed first as soon as the queue works again.
 */
final class LabelAtOnce implements AfterRecord {

  private final Session session;
  private final BagLabels labels;
  private final String queue;
  private final Media media;
  private final int dpi;
  private final String batch;
  private final Set<String> waiting = new LinkedHashSet<>();

  LabelAtOnce(
      Session session,
      Bench bench,
      BatchState batch,
      Method method,
      String queue,
      String media,
      int dpi) {
    this.session = session;
    this.batch = batch.name();
    this.dpi = dpi;
    this.labels = new BagLabels(bench, batch, method);
    this.queue = queue;
    try {
      this.media = MediaCatalog.find(media);
    } catch (PaperProblem e) {
      throw PaperFile.problem(e);
    }
    requireOneAtATime();
  }

  /** Before the first mass, not after it. */
  private void requireOneAtATime() {
    if (media.perPage() > 1) {
      throw new Problem.WrongUse(
          "The stock " + media.name() + " has several labels on a page.",
          "One label at a time needs a roll; print sheets afterwards with siltbench labels.");
    }
    try {
      new LabelRun(List.of(), media, CodeKind.DATA_MATRIX, dpi, 1, false);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(e.getMessage() + ".", "Check --dpi.");
    }
  }

  /** Filters whose label has not gone to the queue yet, oldest first. */
  List<String> waiting() {
    return List.copyOf(waiting);
  }

  /** Says how to print what waits. */
  void tellWaiting() {
    if (!waiting.isEmpty()) {
      session.message(
          (waiting.size() == 1 ? "1 label waits." : waiting.size() + " labels wait.")
              + " Every mass is recorded. When the printer works again: siltbench labels --batch "
              + batch
              + " --new --printer "
              + queue);
    }
  }

  @Override
  public void done(String filter, Entry entry, PanWatch pan) {
    waiting.add(filter);
    for (String next : waiting()) {
      try {
        if (!print(next)) {
          return;
        }
        waiting.remove(next);
      } catch (Problem.Refused e) {
        notYet(next, e.what());
      } catch (PaperProblem e) {
        notYet(next, e.what());
      }
    }
  }

  /** A label that cannot be made does not keep the others back. */
  private void notYet(String filter, String why) {
    waiting.remove(filter);
    waits(filter, why);
  }

  /** True where the queue took it. */
  private boolean print(String filter) {
    BagLabels.Ready ready = labels.of(filter);
    PrintOutcome outcome = LabelPrinter.print(queue, run(ready));
    if (!(outcome instanceof PrintOutcome.Sent)) {
      waits(filter, PrintText.of(outcome));
      return false;
    }
    labels.record(List.of(ready), media.name(), queue, 1);
    session.announce("label " + filter, Map.of("event", "label", "filter", filter));
    return true;
  }

  private LabelRun run(BagLabels.Ready ready) {
    return new LabelRun(List.of(ready.label()), media, CodeKind.DATA_MATRIX, dpi, 1, false);
  }

  private void waits(String filter, String why) {
    session.progress(
        "No label for "
            + filter
            + " yet"
            + (waiting.size() > 1 ? " (" + waiting.size() + " wait): " : ": ")
            + why
            + " Its mass is recorded; the label waits.",
        Map.of("event", "label-waits", "filter", filter, "why", why));
  }
}
