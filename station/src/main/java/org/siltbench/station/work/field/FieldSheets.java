package org.siltbench.station.work.field;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Taken;
import org.siltbench.labels.sheet.FieldSheet;
import org.siltbench.station.Problem;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.life.Status;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.table.SafeCells;
import org.siltbench.station.work.paper.InPrint;
import org.siltbench.station.work.receipt.ReceiptReader;
import org.siltbench.station.work.scan.BagScan;

/** Makes the field sheet of a batch from the filters that go, or have gone, to the water. */
public final class FieldSheets {

  private FieldSheets() {}

  /**
   * The sheet of a batch.
   *
   * @param trip only the filters issued to this trip; empty for all that can go
   * @throws Problem.Refused if there is none
   */
  public static FieldSheet of(RegisterView register, BatchState batch, Method method, String trip) {
    List<FieldSheet.Line> lines = new ArrayList<>();
    for (FilterState filter : Filters.ofBatch(register, batch.code())) {
      if (goes(filter, trip)) {
        lines.add(
            new FieldSheet.Line(
                lines.size() + 1,
                InPrint.id(filter.id()),
                filter.role().code(),
                filter.duplicate(),
                "",
                ""));
      }
    }
    if (lines.isEmpty()) {
      throw new Problem.Refused(
          trip.isEmpty() ? FieldSays.NONE_READY : FieldSays.NONE_OUT, batch.name(), trip);
    }
    return new FieldSheet(
        batch.code(),
        batch.name(),
        trip,
        method.standard() + ", " + method.edition(),
        method.taken() == Taken.WHOLE,
        lines);
  }

  private static boolean goes(FilterState filter, String trip) {
    if (!trip.isEmpty()) {
      return filter.status() == Status.ISSUED && filter.trip().equals(trip);
    }
    boolean ready = filter.status() == Status.PRE_WEIGHED || filter.status() == Status.ISSUED;
    return ready && !Life.BENCH_ROLES.contains(filter.role());
  }

  /** Writes the sheet as a table to be filled in and read back at receipt. */
  public static void table(FieldSheet sheet, Method method, OutputStream out) throws IOException {
    Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    CsvWriter csv = CsvWriter.builder().build(text);
    csv.writeRecord(ReceiptReader.COLUMNS);
    for (FieldSheet.Line line : sheet.lines()) {
      csv.writeRecord(
          ReceiptReader.COLUMNS.stream()
              .map(column -> SafeCells.of(cell(line, method, column)))
              .toList());
    }
    csv.flush();
  }

  private static String cell(FieldSheet.Line line, Method method, String column) {
    return switch (column) {
      case "filter" -> BagScan.of(line.id()).filter().text();
      case "role" -> line.role();
      case "filter_order" -> Integer.toString(line.order());
      case "taken" -> method.taken().word();
      default -> "";
    };
  }
}
