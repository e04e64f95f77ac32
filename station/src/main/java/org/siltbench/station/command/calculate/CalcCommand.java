package org.siltbench.station.command.calculate;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.result.BatchReport;
import org.siltbench.calc.result.ResultRow;
import org.siltbench.station.Problem;
import org.siltbench.station.command.LongWork;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.calculate.BatchDocument;
import org.siltbench.station.work.calculate.Calculation;
import org.siltbench.station.work.calculate.CsvSink;
import org.siltbench.station.work.calculate.ExplainedSink;
import org.siltbench.station.work.calculate.JsonSink;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.paper.PaperFile;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code calc}. */
final class CalcCommand implements Task {

  private static final int BUFFER = 1 << 16;

  @Parameters(index = "0", paramLabel = "FILE.csv", description = "masses and volumes")
  private Path file = Path.of("");

  @Option(
      names = "--method",
      required = true,
      paramLabel = "KEY-or-file",
      description = "a method's key, or a method file")
  private String method = "";

  @Option(names = "--out", paramLabel = "F", description = "write there instead of standard output")
  private @Nullable Path out;

  @Option(
      names = "--compare",
      description =
          "put the interval by distributions beside the first order (100 000 trials a row)")
  private boolean compare;

  @Option(
      names = "--explain",
      paramLabel = "FILTER",
      description =
          "write out how this filter's result came about, or all; without --json and --out in place"
              + " of the table")
  private String explain = "";

  @Override
  public int run(Session session) throws IOException {
    Method chosen = method(session);
    Calculation calculation = new Calculation(file, chosen);
    Path target = out;
    if (target == null) {
      boolean instead = !explain.isEmpty() && !session.json();
      Writer writer = instead ? Writer.nullWriter() : session.console().writer();
      calculation.run(telling(session, writer, chosen));
      writer.flush();
    } else {
      PaperFile.write(
          target,
          to -> {
            Writer writer =
                new BufferedWriter(new OutputStreamWriter(to, StandardCharsets.UTF_8), BUFFER);
            calculation.runDiscardably(telling(session, writer, chosen));
            writer.flush();
          });
    }
    return 0;
  }

  private Telling telling(Session session, Writer writer, Method chosen) throws IOException {
    return new Telling(session, sink(session, writer, chosen), file, explain);
  }

  private Method method(Session session) {
    Path path = Path.of(method);
    boolean looksLikeFile = method.endsWith(".method") || method.contains("/");
    return looksLikeFile && Files.isRegularFile(path)
        ? MethodBook.read(path)
        : session.methods().get(method);
  }

  private Calculation.Sink sink(Session session, Writer writer, Method method) throws IOException {
    JsonSink.Told told = new JsonSink.Told(compare, explain);
    if (session.json()) {
      return new JsonSink(writer, method, told);
    }
    CsvSink table = new CsvSink(writer, method.report().digits(), compare);
    return explain.isEmpty() ? table : new ExplainedSink(table, method, told, session::fact);
  }

  /** Tells the batch's flags in words at the end. */
  private static final class Telling implements Calculation.Sink {

    private final Session session;
    private final Calculation.Sink sink;
    private final Path file;
    private final String wanted;
    private final LongWork work;
    private long rows;
    private boolean found;

    Telling(Session session, Calculation.Sink sink, Path file, String wanted) {
      this.session = session;
      this.sink = sink;
      this.file = file;
      this.wanted = wanted;
      this.work = new LongWork(session);
      this.found = wanted.isEmpty() || wanted.equals("all");
    }

    @Override
    public void begin(List<String> columns) throws IOException {
      sink.begin(columns);
    }

    @Override
    public void row(List<String> cells, ResultRow result) throws IOException {
      found |= result.input().filter().equals(wanted);
      sink.row(cells, result);
      rows++;
      work.counted("rows", rows);
    }

    @Override
    public void end(BatchReport report) throws IOException {
      sink.end(report);
      for (Flag flag : report.flags()) {
        session.message(flag.word() + ": " + flag.means());
      }
      BatchDocument.sentences(report).forEach(session::message);
      if (!found) {
        throw new Problem.WrongUse(
            "The table " + file + " has no filter \"" + wanted + "\" to explain.",
            "Name it as the column filter does, or say --explain all.");
      }
    }
  }
}
