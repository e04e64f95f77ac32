package org.siltbench.station.work.receipt;

import java.util.List;

/**
 * The receipt table, read.
 *
 * @param rows lines with notes
 * @param unused filters on lines with nothing else written
 */
public record ReceiptTable(List<ReceiptRow> rows, List<String> unused) {

  /** Copies the lists. */
  public ReceiptTable {
    rows = List.copyOf(rows);
    unused = List.copyOf(unused);
  }
}
