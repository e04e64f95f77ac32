package org.siltbench.station.work.calculate;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.siltbench.calc.result.BatchReport;
import org.siltbench.calc.result.ResultRow;
import org.siltbench.station.table.SafeCells;

/** Results as a table: the columns that were given, then those that were calculated, rounded. */
public final class CsvSink implements Calculation.Sink {

  private final CsvWriter csv;
  private final int digits;
  private final boolean compared;
  private int[] kept = new int[0];
  private List<String> further = List.of();
  private String[] out = new String[0];

  /**
   * A table.
   *
   * @param out where to; not closed here
   * @param digits significant figures of a concentration at most
   */
  public CsvSink(Writer out, int digits) {
    this(out, digits, false);
  }

  /**
   * A table.
   *
   * @param compared with the interval by distributions beside the first order
   */
  public CsvSink(Writer out, int digits, boolean compared) {
    this.csv = CsvWriter.builder().build(out);
    this.digits = digits;
    this.compared = compared;
  }

  @Override
  public void begin(List<String> columns) {
    further = FurtherColumns.askedBy(columns);
    Set<String> ours = new TreeSet<>();
    ResultColumns.NAMES.forEach(name -> ours.add(name.toLowerCase(Locale.ROOT)));
    ours.addAll(further);
    List<String> header = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      if (!ours.contains(columns.get(i).toLowerCase(Locale.ROOT))) {
        places.add(i);
        header.add(SafeCells.of(columns.get(i)));
      }
    }
    kept = places.stream().mapToInt(i -> i).toArray();
    header.addAll(ResultColumns.NAMES);
    header.addAll(further);
    if (compared) {
      header.addAll(TwoWayColumns.NAMES);
    }
    out = new String[header.size()];
    csv.writeRecord(header);
  }

  @Override
  public void row(List<String> cells, ResultRow result) {
    int at = 0;
    for (int place : kept) {
      out[at++] = SafeCells.of(cells.get(place));
    }
    at = ResultColumns.round(result, digits, out, at);
    if (!further.isEmpty()) {
      Map<String, Double> exact = FurtherColumns.exact(result.further());
      for (String name : further) {
        out[at++] = FurtherColumns.rounded(name, exact.get(name), digits);
      }
    }
    if (compared) {
      for (String cell : TwoWayColumns.rounded(result, digits)) {
        out[at++] = cell;
      }
    }
    csv.writeRecord(out);
  }

  @Override
  public void end(BatchReport report) throws IOException {
    csv.flush();
  }
}
