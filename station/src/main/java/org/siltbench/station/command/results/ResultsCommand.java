package org.siltbench.station.command.results;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.flag.Flag;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.calculate.ResultColumns;
import org.siltbench.station.work.results.BatchResults;
import org.siltbench.station.work.results.BatchResults.FilterResult;
import org.siltbench.station.work.results.ResultFiles;
import org.siltbench.station.work.results.ResultTable;
import picocli.CommandLine.Option;

/** {@code results}. */
final class ResultsCommand implements Task {

  @Option(names = "--batch", required = true, paramLabel = "NAME", description = "the batch")
  private String batch = "";

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "write tables, report and pictures into this folder")
  private @Nullable Path out;

  @Option(names = "--client", paramLabel = "TEXT", description = "whom the report is for")
  private String client = "";

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    BatchResults results =
        BatchResults.of(bench, session.methods(), Batches.require(bench.register(), batch));
    Map<String, @Nullable Object> document = ResultTable.document(results);
    if (out != null) {
      List<Path> files = ResultFiles.write(bench, results, out, client);
      document.put("files", files.stream().map(Path::toString).toList());
      files.forEach(file -> session.message("Written: " + file));
    }
    session.document(document);
    results.rows().forEach(row -> session.fact(line(results, row)));
    results.pending().forEach((id, why) -> session.message(id + " has no result: " + why));
    for (Flag flag : results.report().flags()) {
      session.message(flag.word() + ": " + flag.means());
    }
    return 0;
  }

  private static String line(BatchResults results, FilterResult row) {
    List<String> figures = ResultColumns.rounded(row.result(), results.method().report().digits());
    String sample = row.note("sample");
    return row.state().id()
        + " "
        + row.state().role().code()
        + (sample.isEmpty() ? "" : " " + sample)
        + ": "
        + figures.get(0)
        + " mg"
        + (figures.get(2).isEmpty() ? "" : ", " + figures.get(2) + " ± " + figures.get(4) + " mg/L")
        + ", constant "
        + figures.get(6)
        + (figures.get(7).isEmpty() ? "" : ", " + figures.get(7));
  }
}
