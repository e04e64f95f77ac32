package org.siltbench.station.command.calculate;

import java.io.IOException;
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
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.calculate.Calculation;
import org.siltbench.station.work.calculate.CsvSink;
import org.siltbench.station.work.calculate.JsonSink;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.paper.PaperFile;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code calc}. */
final class CalcCommand implements Task {

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

  @Override
  public int run(Session session) throws IOException {
    Method chosen = method(session);
    Calculation calculation = new Calculation(file, chosen);
    Path target = out;
    if (target == null) {
      Writer writer = session.console().writer();
      calculation.run(new Telling(session, sink(session, writer, chosen)));
      writer.flush();
    } else {
      PaperFile.write(
          target,
          to -> {
            Writer writer = new java.io.OutputStreamWriter(to, StandardCharsets.UTF_8);
            calculation.run(new Telling(session, sink(session, writer, chosen)));
            writer.flush();
          });
    }
    return 0;
  }

  private Method method(Session session) {
    Path path = Path.of(method);
    boolean looksLikeFile = method.endsWith(".method") || method.contains("/");
    return looksLikeFile && Files.isRegularFile(path)
        ? MethodBook.read(path)
        : session.methods().get(method);
  }

  private static Calculation.Sink sink(Session session, Writer writer, Method method)
      throws IOException {
    return session.json()
        ? new JsonSink(writer, method.key())
        : new CsvSink(writer, method.report().digits());
  }

  /** Tells the batch's flags in words at the end. */
  private record Telling(Session session, Calculation.Sink sink) implements Calculation.Sink {

    @Override
    public void begin(List<String> columns) throws IOException {
      sink.begin(columns);
    }

    @Override
    public void row(List<String> cells, ResultRow result) throws IOException {
      sink.row(cells, result);
    }

    @Override
    public void end(BatchReport report) throws IOException {
      sink.end(report);
      for (Flag flag : report.flags()) {
        session.message(flag.word() + ": " + flag.means());
      }
    }
  }
}
