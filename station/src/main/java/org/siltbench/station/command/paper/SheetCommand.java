package org.siltbench.station.command.paper;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.Papers;
import org.siltbench.labels.sheet.FieldSheet;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.field.FieldSheets;
import org.siltbench.station.work.paper.Imprints;
import org.siltbench.station.work.paper.PaperFile;
import picocli.CommandLine.Option;

/** {@code fieldsheet}. */
final class SheetCommand implements Task {

  @Option(names = "--batch", required = true, paramLabel = "NAME", description = "the batch")
  private String batch = "";

  @Option(names = "--out", paramLabel = "F.pdf", description = "the sheet on paper")
  private @Nullable Path out;

  @Option(names = "--csv", paramLabel = "F.csv", description = "the sheet as a table to fill in")
  private @Nullable Path csv;

  @Option(names = "--trip", paramLabel = "NAME", description = "only the bags out on this trip")
  private String trip = "";

  @Override
  public int run(Session session) {
    if (out == null && csv == null) {
      throw new Problem.WrongUse("Where to?", "Give --out F.pdf, --csv F.csv, or both.");
    }
    Bench bench = session.existingBench();
    BatchState state = Batches.require(bench.register(), batch);
    Method method = session.methods().inForce(bench.register(), state.method());
    FieldSheet sheet = FieldSheets.of(bench.register(), state, method, trip);
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("batch", state.name());
    document.put("filters", sheet.lines().size());
    Path paper = out;
    if (paper != null) {
      PaperFile.write(paper, to -> Papers.fieldSheet(sheet, Imprints.of(bench), to));
      document.put("out", paper.toString());
      session.fact(sheet.lines().size() + " filters on " + paper);
    }
    Path table = csv;
    if (table != null) {
      PaperFile.write(table, to -> FieldSheets.table(sheet, method, to));
      document.put("csv", table.toString());
      session.fact(sheet.lines().size() + " filters in " + table);
    }
    session.document(document);
    return 0;
  }
}
