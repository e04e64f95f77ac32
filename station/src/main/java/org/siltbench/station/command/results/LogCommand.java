package org.siltbench.station.command.results;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.Papers;
import org.siltbench.labels.log.LogSheet;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.log.LogSheets;
import org.siltbench.station.work.paper.Imprints;
import org.siltbench.station.work.paper.PaperFile;
import picocli.CommandLine.Option;

/** {@code logsheet}. */
final class LogCommand implements Task {

  @Option(names = "--batch", required = true, paramLabel = "NAME", description = "the batch")
  private String batch = "";

  @Option(names = "--out", required = true, paramLabel = "F.pdf", description = "where to")
  private Path out = Path.of("");

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    BatchState state = Batches.require(bench.register(), batch);
    Method method = session.methods().inForce(bench.register(), state.method());
    LogSheet sheet = LogSheets.of(bench.register(), state, method);
    PaperFile.write(out, to -> Papers.logSheet(sheet, Imprints.of(bench), to));
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("batch", state.name());
    document.put("weighings", sheet.lines().size());
    document.put("checks", sheet.checks().size());
    document.put("corrections", sheet.corrections().size());
    document.put("out", out.toString());
    session.document(document);
    session.fact(
        sheet.lines().size()
            + " weighings, "
            + sheet.corrections().size()
            + " corrections in "
            + out);
    return 0;
  }
}
