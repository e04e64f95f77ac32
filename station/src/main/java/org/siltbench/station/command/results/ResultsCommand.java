package org.siltbench.station.command.results;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.result.Explanation;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.LongWork;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.calculate.BatchDocument;
import org.siltbench.station.work.calculate.JsonSink;
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

  @Option(
      names = "--compare",
      description =
          "hold the first order against 100 000 trials for each sample, here and in the report")
  private boolean compare;

  @Option(
      names = "--explain",
      paramLabel = "FILTER",
      description = "write out how this filter's result came about, or all")
  private String explain = "";

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    BatchResults results =
        BatchResults.of(bench, session.methods(), Batches.require(bench.register(), batch));
    JsonSink.Told told = new JsonSink.Told(compare, explain);
    Map<String, @Nullable Object> document = ResultTable.document(results, told);
    if (out != null) {
      List<Path> files =
          ResultFiles.write(bench, results, out, client, compare, new LongWork(session));
      document.put("files", files.stream().map(Path::toString).toList());
      files.forEach(file -> session.message("Written: " + file));
    }
    session.document(document);
    for (FilterResult row : results.rows()) {
      session.fact(line(results, row));
      if (told.explains(row.state().id())) {
        Explanation.of(row.result(), results.method()).forEach(s -> session.fact("  " + s));
      }
    }
    results.pending().forEach((id, why) -> session.message(id + " has no result: " + why));
    for (Flag flag : results.report().flags()) {
      session.message(flag.word() + ": " + flag.means());
    }
    BatchDocument.sentences(results.report()).forEach(session::message);
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
