package org.siltbench.station.work.calculate;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.siltbench.calc.result.InputColumns;
import org.siltbench.calc.result.InputFaults;
import org.siltbench.calc.result.InputRow;
import org.siltbench.calc.result.RowFault;
import org.siltbench.calc.result.RowSource;
import org.siltbench.station.table.Row;
import org.siltbench.station.table.Table;

/** The rows of a table file, read anew from the disk each time they are asked for. */
final class TableRows implements RowSource {

  private static final int SHOWN_FAULTS = 20;

  private final Path file;
  private final List<String> columns;
  private final InputColumns meaning;
  private List<String> current = List.of();

  TableRows(Path file) throws IOException {
    this.file = file;
    try (Table table = Table.open(file)) {
      this.columns = table.columns();
    }
    this.meaning = new InputColumns(columns, 1);
  }

  /** True if no row can depend on another by the columns there are. */
  boolean standAlone() {
    return meaning.rowsStandAlone();
  }

  /** The names of the columns, as they stand in the file. */
  List<String> columns() {
    return columns;
  }

  /** The cells of the row that was handed out last. */
  List<String> current() {
    return current;
  }

  @Override
  public void forEach(Consumer<InputRow> reader) {
    List<RowFault> faults = new ArrayList<>();
    List<RowFault> found = new ArrayList<>();
    long count = 0;
    try (Table table = Table.open(file)) {
      Numbers numbers = new Numbers(table.columns());
      while (table.hasNext()) {
        Row row = table.next();
        if (!row.blank()) {
          read(row, numbers, reader, found);
          count += found.size();
          if (!found.isEmpty()) {
            found.stream().limit(SHOWN_FAULTS - (long) faults.size()).forEach(faults::add);
            found.clear();
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (count > 0) {
      throw new InputFaults(faults, count);
    }
  }

  private void read(Row row, Numbers numbers, Consumer<InputRow> reader, List<RowFault> found) {
    InputRow input = meaning.read(numbers.normal(row), row.line(), found);
    if (found.isEmpty()) {
      current = row.cells();
      reader.accept(input);
    }
  }

  /** Turns decimal commas into points in the columns that hold numbers. */
  private static final class Numbers {

    private final boolean[] number;

    Numbers(List<String> columns) {
      number = new boolean[columns.size()];
      for (int i = 0; i < number.length; i++) {
        String name = columns.get(i).strip().toLowerCase(Locale.ROOT);
        number[i] =
            name.matches("pre_g|post\\d*_g|\\w+_ml|\\w+_mg_l|ignited_g|mixture_g|muffled_c");
      }
    }

    List<String> normal(Row row) {
      if (!row.decimalComma()) {
        return row.cells();
      }
      List<String> cells = new ArrayList<>(row.cells());
      for (int i = 0; i < number.length; i++) {
        if (number[i] && cells.get(i).indexOf(',') >= 0) {
          cells.set(i, row.decimal(i, "a number").orElse(""));
        }
      }
      return cells;
    }
  }
}
