package org.siltbench.station.work.receipt;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.table.Row;
import org.siltbench.station.table.Table;
import org.siltbench.station.work.StatedTimes;

/** When the water was collected and filtered. */
final class TimeCells {

  private static final String EXPECTED =
      "a time such as 2026-05-14T09:45 or 2026-05-14T09:45+02:00";

  private final Clock clock;
  private final Table table;
  private final Row row;

  TimeCells(Clock clock, Table table, Row row) {
    this.clock = clock;
    this.table = table;
    this.row = row;
  }

  void into(Map<String, String> columns) {
    OffsetDateTime collected = take("collected", columns);
    OffsetDateTime from = take("filtered_from", columns);
    OffsetDateTime to = take("filtered_to", columns);
    inOrder(collected, from, "filtered_from", Said.of(ReceiptSays.AFTER_COLLECTED));
    inOrder(from, to, "filtered_to", Said.of(ReceiptSays.AFTER_BEGIN));
    inOrder(collected, to, "filtered_to", Said.of(ReceiptSays.AFTER_COLLECTED));
  }

  private @Nullable OffsetDateTime take(String name, Map<String, String> columns) {
    int column = table.column(name);
    String text = row.text(column);
    if (text.isEmpty()) {
      return null;
    }
    OffsetDateTime time =
        StatedTimes.parse(text, clock).orElseThrow(() -> row.wrong(column, EXPECTED));
    if (StatedTimes.inFuture(time, clock)) {
      throw row.wrong(column, Said.of(ReceiptSays.PAST));
    }
    columns.put(name, time.toString());
    return time;
  }

  private void inOrder(
      @Nullable OffsetDateTime first,
      @Nullable OffsetDateTime then,
      String column,
      Words expected) {
    if (first != null && then != null && then.isBefore(first)) {
      throw row.wrong(table.column(column), expected);
    }
  }
}
