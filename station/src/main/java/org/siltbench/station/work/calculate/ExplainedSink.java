package org.siltbench.station.work.calculate;

import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.result.BatchReport;
import org.siltbench.calc.result.Explanation;
import org.siltbench.calc.result.ResultRow;

/** Writes out chosen results in sentences, on their way to another sink. */
public final class ExplainedSink implements Calculation.Sink {

  private final Calculation.Sink next;
  private final Method method;
  private final JsonSink.Told told;
  private final Consumer<String> lines;

  /**
   * A sink before another.
   *
   * @param lines takes the filter's name and the sentences about it, one a line
   */
  public ExplainedSink(
      Calculation.Sink next, Method method, JsonSink.Told told, Consumer<String> lines) {
    this.next = next;
    this.method = method;
    this.told = told;
    this.lines = lines;
  }

  @Override
  public void begin(List<String> columns) throws IOException {
    next.begin(columns);
  }

  @Override
  public void row(List<String> cells, ResultRow result) throws IOException {
    next.row(cells, result);
    if (told.explains(result.input().filter())) {
      lines.accept(result.input().filter());
      Explanation.of(result, method).forEach(line -> lines.accept("  " + line));
    }
  }

  @Override
  public void end(BatchReport report) throws IOException {
    next.end(report);
  }
}
