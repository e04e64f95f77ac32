package org.siltbench.labels.draw;

import java.util.ArrayList;
import java.util.List;

/** A table: columns, rows, and whether it is there to be read or to be written in. */
public final class Table {

  private final List<Column> columns;
  private final List<List<Cell>> rows = new ArrayList<>();
  private final double leastHeight;
  private final boolean ruled;

  private Table(List<Column> columns, double leastHeight, boolean ruled) {
    this.columns = List.copyOf(columns);
    this.leastHeight = leastHeight;
    this.ruled = ruled;
  }

  /** A table to read. */
  public static Table toRead(Column... columns) {
    return new Table(List.of(columns), 0, false);
  }

  /** A table with vertical rules and rows of at least a height, to write in. */
  public static Table toWrite(double leastHeight, Column... columns) {
    return new Table(List.of(columns), leastHeight, true);
  }

  public Table row(Cell... cells) {
    if (cells.length != columns.size()) {
      throw new IllegalArgumentException(
          "a row of " + cells.length + " cells in a table of " + columns.size() + " columns");
    }
    rows.add(List.of(cells));
    return this;
  }

  List<Column> columns() {
    return columns;
  }

  List<List<Cell>> rows() {
    return rows;
  }

  double leastHeight() {
    return leastHeight;
  }

  boolean ruled() {
    return ruled;
  }
}
