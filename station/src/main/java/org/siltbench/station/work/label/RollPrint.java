package org.siltbench.station.work.label;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.media.MediaCatalog;
import org.siltbench.labels.print.LabelPrinter;
import org.siltbench.labels.print.PrintOutcome;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.paper.PaperFile;

/**
 * Prints the label of each filter just weighed on a roll. If that fails the label waits and goes
 * out before the next one; the mass is safe. Used by one thread.
 */
public final class RollPrint {

  /** Who is told. */
  public interface Told {
    /** The queue took the label. */
    void printed(String filter);

    /** The label waits. */
    void waits(String filter, Words why, int waiting);
  }

  private final BagLabels labels;
  private final String queue;
  private final Media media;
  private final int dpi;
  private final Told told;
  private final Set<String> waiting = new LinkedHashSet<>();

  /**
   * Prints on a queue.
   *
   * @param media a stock of the catalogue or a file
   * @throws Problem.WrongUse if there is no such stock, or it has several labels on a page
   */
  public RollPrint(BagLabels labels, String queue, String media, int dpi, Told told) {
    this.labels = labels;
    this.queue = queue;
    this.dpi = dpi;
    this.told = told;
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
      throw new Problem.WrongUse(LabelSays.NO_ROLL, media.name());
    }
    try {
      new LabelRun(List.of(), media, CodeKind.DATA_MATRIX, dpi, 1, false);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(LabelSays.RESOLUTION, Elsewhere.words(e));
    }
  }

  /** Filters whose label has not gone to the queue yet, oldest first. */
  public List<String> waiting() {
    return List.copyOf(waiting);
  }

  /** Prints what waits, and then this one. */
  public void print(String filter) {
    waiting.add(filter);
    for (String next : waiting()) {
      try {
        if (!printed(next)) {
          return;
        }
        waiting.remove(next);
      } catch (Problem.Refused e) {
        notYet(next, e.happened());
      } catch (PaperProblem e) {
        notYet(next, Elsewhere.words(e));
      }
    }
  }

  /** A label that cannot be made does not keep the others back. */
  private void notYet(String filter, Words why) {
    waiting.remove(filter);
    told.waits(filter, why, waiting.size());
  }

  /** True where the queue took it. */
  private boolean printed(String filter) {
    BagLabels.Ready ready = labels.of(filter);
    PrintOutcome outcome = LabelPrinter.print(queue, run(ready));
    if (!(outcome instanceof PrintOutcome.Sent)) {
      told.waits(filter, PrintText.of(outcome), waiting.size());
      return false;
    }
    labels.record(List.of(ready), media.name(), queue, 1);
    told.printed(filter);
    return true;
  }

  private LabelRun run(BagLabels.Ready ready) {
    return new LabelRun(List.of(ready.label()), media, CodeKind.DATA_MATRIX, dpi, 1, false);
  }
}
