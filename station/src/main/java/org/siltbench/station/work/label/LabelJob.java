package org.siltbench.station.work.label;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.Papers;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.media.MediaCatalog;
import org.siltbench.labels.print.LabelPrinter;
import org.siltbench.labels.print.PrintOutcome;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.paper.Imprints;
import org.siltbench.station.work.paper.PaperFile;

/** The bag labels of a batch, to a file or a queue; recorded once they are on their way. */
public final class LabelJob {

  private final Bench bench;
  private final BatchState batch;
  private final BagLabels labels;

  /** For a batch under its method. */
  public LabelJob(Bench bench, BatchState batch, Method method) {
    this.bench = bench;
    this.batch = batch;
    this.labels = new BagLabels(bench, batch, method);
  }

  /**
   * How they are printed.
   *
   * @param media a stock of the catalogue or a file
   * @param dpi the printer's dots per inch
   * @param code data-matrix, qr or code-128
   * @param startAt first free label of the first sheet
   * @param slip a twin of each for a slip inside the bag
   */
  public record Manner(String media, int dpi, String code, int startAt, boolean slip) {}

  /**
   * Which labels.
   *
   * @param filters these only; empty for all of the batch
   * @param onlyNew of all, only those without a label or whose mass has changed
   */
  public List<BagLabels.Ready> ready(List<String> filters, boolean onlyNew) {
    List<BagLabels.Ready> some = new ArrayList<>();
    if (filters.isEmpty()) {
      some.addAll(labels.due(!onlyNew));
    }
    filters.forEach(id -> some.add(labels.of(id)));
    if (some.isEmpty()) {
      throw new Problem.Refused(LabelSays.NONE_DUE, batch.name());
    }
    return some;
  }

  /** Draws them into a file and records them. */
  public void toFile(List<BagLabels.Ready> ready, Manner manner, Path file) {
    LabelRun run = run(ready, manner);
    PaperFile.write(file, to -> Papers.labels(run, Imprints.of(bench), to));
    record(ready, run, String.valueOf(file.getFileName()));
  }

  /**
   * Sends them to a queue and records them.
   *
   * @throws Problem.Outside if the queue does not take them; nothing is recorded
   */
  public void toQueue(List<BagLabels.Ready> ready, Manner manner, String queue) {
    LabelRun run = run(ready, manner);
    PrintOutcome outcome = LabelPrinter.print(queue, run);
    if (!(outcome instanceof PrintOutcome.Sent)) {
      throw new Problem.Outside(null, LabelSays.LABELS_WAIT, PrintText.of(outcome));
    }
    record(ready, run, queue);
  }

  private void record(List<BagLabels.Ready> ready, LabelRun run, String to) {
    labels.record(ready, run.media().name(), to, run.slip() ? 2 : 1);
  }

  private static LabelRun run(List<BagLabels.Ready> ready, Manner manner) {
    try {
      Media stock = MediaCatalog.find(manner.media());
      return new LabelRun(
          ready.stream().map(BagLabels.Ready::label).toList(),
          stock,
          CodeKind.of(manner.code()),
          manner.dpi(),
          manner.startAt(),
          manner.slip());
    } catch (PaperProblem e) {
      throw PaperFile.problem(e);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(LabelSays.OPTIONS, Elsewhere.words(e));
    }
  }
}
