package org.siltbench.station.command.paper;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
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
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.weigh.ConstancyNote;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.label.BagLabels;
import org.siltbench.station.work.label.PrintText;
import org.siltbench.station.work.paper.Imprints;
import org.siltbench.station.work.paper.PaperFile;
import org.siltbench.station.work.scan.BagScan;
import picocli.CommandLine.Option;

/** {@code labels}. */
final class LabelsCommand implements Task {

  @Option(names = "--batch", required = true, paramLabel = "NAME", description = "the batch")
  private String batch = "";

  @Option(
      names = "--media",
      paramLabel = "FILE-or-name",
      description = "label stock; default: ${DEFAULT-VALUE}")
  private String media = "roll-50x25";

  @Option(names = "--out", paramLabel = "F.pdf", description = "write a PDF")
  private @Nullable Path out;

  @Option(names = "--printer", paramLabel = "QUEUE", description = "or print on this queue")
  private @Nullable String printer;

  @Option(
      names = "--filters",
      split = ",",
      paramLabel = "ID",
      description = "these only, parted by commas; also prints them again")
  private List<String> filters = List.of();

  @Option(names = "--new", description = "only those without a label, or whose mass has changed")
  private boolean onlyNew;

  @Option(
      names = "--start-at",
      paramLabel = "N",
      description = "first free label of the first sheet; default: ${DEFAULT-VALUE}")
  private int startAt = 1;

  @Option(
      names = "--dpi",
      paramLabel = "N",
      description = "the printer's dots per inch; default: ${DEFAULT-VALUE}")
  private int dpi = 300;

  @Option(
      names = "--code",
      paramLabel = "KIND",
      description = "data-matrix, qr or code-128; default: ${DEFAULT-VALUE}")
  private String code = CodeKind.DATA_MATRIX.word();

  @Option(names = "--slip", description = "a twin of each label for a slip inside the bag")
  private boolean slip;

  @Override
  public int run(Session session) {
    if ((out == null) == (printer == null)) {
      throw new Problem.WrongUse("Where to?", "Give either --out F.pdf or --printer NAME.");
    }
    Bench bench = session.existingBench();
    BatchState state = Batches.require(bench.register(), batch);
    BagLabels labels =
        new BagLabels(bench, state, session.methods().inForce(bench.register(), state.method()));
    List<BagLabels.Ready> ready = ready(labels);
    if (ready.isEmpty()) {
      throw new Problem.Refused(
          "Batch " + state.name() + " has no filter whose label is due.",
          "Nothing was printed.",
          "Pre-weigh it first; labels are printed from the constant mass.");
    }
    try {
      Media stock = MediaCatalog.find(media);
      LabelRun run =
          new LabelRun(
              ready.stream().map(BagLabels.Ready::label).toList(),
              stock,
              CodeKind.of(code),
              dpi,
              startAt,
              slip);
      String to = print(bench, run);
      ConstancyNote.tell(
          session,
          bench,
          ready.stream().map(BagLabels.Ready::filter).toList(),
          session.methods().inForce(bench.register(), state.method()));
      labels.record(ready, stock.name(), to, slip ? 2 : 1);
      tell(session, state, ready, to);
      return 0;
    } catch (PaperProblem e) {
      throw PaperFile.problem(e);
    } catch (IllegalArgumentException e) {
      throw new Problem.WrongUse(String.valueOf(e.getMessage()) + ".", "Check the options.");
    }
  }

  private List<BagLabels.Ready> ready(BagLabels labels) {
    if (filters.isEmpty()) {
      return labels.due(!onlyNew);
    }
    List<BagLabels.Ready> some = new ArrayList<>();
    for (String id : filters) {
      some.add(labels.of(BagScan.of(id).filter().text()));
    }
    return some;
  }

  private String print(Bench bench, LabelRun run) {
    Path file = out;
    if (file != null) {
      PaperFile.write(file, to -> Papers.labels(run, Imprints.of(bench), to));
      return file.getFileName().toString();
    }
    String queue = String.valueOf(printer);
    PrintOutcome outcome = LabelPrinter.print(queue, run);
    if (!(outcome instanceof PrintOutcome.Sent)) {
      throw new Problem.Outside(
          PrintText.of(outcome),
          "Every mass is recorded; the labels wait.",
          "Print again then.",
          null);
    }
    return queue;
  }

  private static void tell(
      Session session, BatchState batch, List<BagLabels.Ready> ready, String to) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (BagLabels.Ready one : ready) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("filter", one.filter().id());
      row.put("code", one.label().code());
      row.put("mass_g", one.grams());
      row.put("revision", one.label().revision());
      row.put("reprint", one.reprint());
      rows.add(row);
    }
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("batch", batch.name());
    document.put("to", to);
    document.put("labels", rows);
    session.document(document);
    session.fact(ready.size() + " labels to " + to);
  }
}
