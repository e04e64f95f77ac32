package org.siltbench.station.register;

import java.sql.SQLException;
import java.util.List;
import java.util.TreeSet;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Hlc;

/** Walks over entries in merge order from a moment on, a page at a time. */
final class EachEntry {

  private final Sql sql;
  private final String text;
  private final Object[] values;
  private Place last;

  EachEntry(Sql sql, long millis, List<String> kinds, int page) {
    this.sql = sql;
    this.last = new Place(new Hlc(millis, -1), new EntryRef("", 0));
    List<String> wanted = List.copyOf(new TreeSet<>(kinds));
    String filter =
        wanted.isEmpty()
            ? ""
            : "kind in (" + String.join(", ", wanted.stream().map(kind -> "?").toList()) + ") and ";
    this.text =
        "select hlc_ms, hlc_n, bench, seq from entry where "
            + filter
            + "hlc_ms >= ? and (hlc_ms, hlc_n, bench, seq) > (?, ?, ?, ?)"
            + " order by hlc_ms, hlc_n, bench, seq fetch first "
            + page
            + " rows only";
    this.values = new Object[wanted.size() + 5];
    for (int i = 0; i < wanted.size(); i++) {
      values[i] = wanted.get(i);
    }
  }

  List<EntryRef> next() throws SQLException {
    int at = values.length - 5;
    values[at] = last.hlc().millis();
    values[at + 1] = last.hlc().millis();
    values[at + 2] = last.hlc().counter();
    values[at + 3] = last.ref().bench();
    values[at + 4] = last.ref().seq();
    List<Place> places =
        sql.list(
            row ->
                new Place(
                    new Hlc(row.getLong(1), row.getInt(2)),
                    new EntryRef(row.getString(3), row.getLong(4))),
            text,
            values);
    if (!places.isEmpty()) {
      last = places.get(places.size() - 1);
    }
    return places.stream().map(Place::ref).toList();
  }
}
