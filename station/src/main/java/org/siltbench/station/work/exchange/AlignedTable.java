package org.siltbench.station.work.exchange;

import java.util.List;
import java.util.stream.Collectors;
import org.siltbench.station.work.receipt.ReceiptReader;

/** Writes the receipt table so that every line keeps the number it has in the file. */
final class AlignedTable {

  private AlignedTable() {}

  static String of(List<Preview.Line> rows) {
    StringBuilder out = new StringBuilder(String.join(",", ReceiptReader.COLUMNS)).append('\n');
    long at = 2;
    for (Preview.Line row : rows) {
      for (; at < row.line(); at++) {
        out.append('\n');
      }
      out.append(line(row)).append('\n');
      at++;
    }
    return out.toString();
  }

  private static String line(Preview.Line row) {
    return ReceiptReader.COLUMNS.stream()
        .map(column -> quoted(row.cells().getOrDefault(column, "")))
        .collect(Collectors.joining(","));
  }

  private static String quoted(String cell) {
    return '"' + cell.replaceAll("\\R", " ").replace("\"", "\"\"") + '"';
  }
}
