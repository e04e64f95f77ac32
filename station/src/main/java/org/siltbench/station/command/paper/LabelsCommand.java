package org.siltbench.station.command.paper;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.weigh.ConstancyNote;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.label.BagLabels;
import org.siltbench.station.work.label.LabelJob;
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
    Method method = session.methods().inForce(bench.register(), state.method());
    LabelJob job = new LabelJob(bench, state, method);
    List<BagLabels.Ready> ready =
        job.ready(filters.stream().map(id -> BagScan.of(id).filter().text()).toList(), onlyNew);
    String to = print(job, ready);
    ConstancyNote.tell(
        session, bench, ready.stream().map(BagLabels.Ready::filter).toList(), method);
    tell(session, state, ready, to);
    return 0;
  }

  private String print(LabelJob job, List<BagLabels.Ready> ready) {
    LabelJob.Manner manner = new LabelJob.Manner(media, dpi, code, startAt, slip);
    Path file = out;
    if (file != null) {
      job.toFile(ready, manner, file);
      return file.getFileName().toString();
    }
    String queue = String.valueOf(printer);
    job.toQueue(ready, manner, queue);
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
