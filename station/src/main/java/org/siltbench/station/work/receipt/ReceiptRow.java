package org.siltbench.station.work.receipt;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.work.scan.BagScan;

/**
 * One line of the receipt table, checked.
 *
 * @param line the line of the file
 * @param bag which filter it is for
 * @param conditions how it came back
 * @param columns what was filled in, normalised: times with offset, numbers with a point
 */
public record ReceiptRow(
    long line, BagScan bag, List<Condition> conditions, Map<String, String> columns) {

  /** Copies, keeping the order of the columns. */
  public ReceiptRow {
    conditions = List.copyOf(conditions);
    columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
  }

  /** The filter's ID. */
  public String filter() {
    return bag.filter().text();
  }

  /** A column; empty if it was not filled in. */
  public String text(String column) {
    return columns.getOrDefault(column, "");
  }

  /** The sample number; a filter without one is its own sample. */
  public String sample() {
    String sample = text("sample");
    return sample.isEmpty() ? filter() : sample;
  }
}
