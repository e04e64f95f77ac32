package org.siltbench.station.work.calculate;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.result.BatchCalculation;
import org.siltbench.calc.result.BatchReport;
import org.siltbench.calc.result.InputFaults;
import org.siltbench.calc.result.ResultRow;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;

/** Calculates a table file under a method; memory does not grow with its length. */
public final class Calculation {

  private final Path file;
  private final Method method;

  public Calculation(Path file, Method method) {
    this.file = file;
    this.method = method;
  }

  /** Takes the results one by one. */
  public interface Sink {
    /** Before the first result; not called if the table has a fault. */
    void begin(List<String> columns) throws IOException;

    /** One result with the cells of its row as they stand in the file. */
    void row(List<String> cells, ResultRow result) throws IOException;

    /** After the last result. */
    void end(BatchReport report) throws IOException;
  }

  /**
   * Calculates. The table is read for faults before the first result is handed out.
   *
   * @throws Problem.WrongUse if the table has faults: line, column, what was expected; then no
   *     result was handed out
   */
  public void run(Sink sink) throws IOException {
    run(sink, false);
  }

  /**
   * Calculates for a sink that is thrown away if this throws, as a file that is not moved to its
   * place: where no row depends on another, the table is then read once only.
   *
   * @throws Problem.WrongUse if the table has faults; what was handed out before is void
   */
  public void runDiscardably(Sink sink) throws IOException {
    run(sink, true);
  }

  private void run(Sink sink, boolean discardable) throws IOException {
    try {
      TableRows rows = new TableRows(file);
      Handing handing = new Handing(sink, rows);
      BatchCalculation calculation = new BatchCalculation(method);
      boolean once = discardable && rows.standAlone() && BatchCalculation.rowsStandAlone(method);
      BatchReport report =
          once ? calculation.runOnce(rows, handing::take) : calculation.run(rows, handing::take);
      handing.begin();
      sink.end(report);
    } catch (InputFaults e) {
      throw new Problem.WrongUse(CalculateSays.NOT_CALCULATED, file, Elsewhere.words(e));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static final class Handing {
    private final Sink sink;
    private final TableRows rows;
    private boolean begun;

    Handing(Sink sink, TableRows rows) {
      this.sink = sink;
      this.rows = rows;
    }

    void begin() throws IOException {
      if (!begun) {
        begun = true;
        sink.begin(rows.columns());
      }
    }

    void take(ResultRow result) {
      try {
        begin();
        sink.row(rows.current(), result);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
