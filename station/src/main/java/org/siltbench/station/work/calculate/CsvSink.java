package org.siltbench.station.work.calculate;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.siltbench.calc.result.BatchReport;
import org.siltbench.calc.result.ResultRow;
import org.siltbench.station.table.SafeCells;

/** Results as a table: the columns that were given, then those that were calculated, rounded. */
public final class CsvSink implements Calculation.Sink {

  private final CsvWriter csv;
  private final int digits;
  private boolean[] kept = new boolean[0];

  /**
   * A table.
   *
   * @param out where to; not closed here
   * @param digits significant figures of a concentration at most
   */
  public CsvSink(Writer out, int digits) {
    this.csv = CsvWriter.builder().build(out);
    this.digits = digits;
  }

  @Override
  public void begin(List<String> columns) {
    Set<String> ours = lower(ResultColumns.NAMES);
    kept = new boolean[columns.size()];
    List<String> header = new ArrayList<>();
    for (int i = 0; i < kept.length; i++) {
      kept[i] = !ours.contains(columns.get(i).toLowerCase(Locale.ROOT));
      if (kept[i]) {
        header.add(SafeCells.of(columns.get(i)));
      }
    }
    header.addAll(ResultColumns.NAMES);
    csv.writeRecord(header);
  }

  private static Set<String> lower(List<String> names) {
    return Set.copyOf(
        names.stream().map(name -> name.toLowerCase(Locale.ROOT)).distinct().toList());
  }

  @Override
  public void row(List<String> cells, ResultRow result) {
    List<String> out = new ArrayList<>(cells.size() + ResultColumns.NAMES.size());
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        out.add(SafeCells.of(cells.get(i)));
      }
    }
    out.addAll(ResultColumns.rounded(result, digits));
    csv.writeRecord(out);
  }

  @Override
  public void end(BatchReport report) throws IOException {
    csv.flush();
  }
}
