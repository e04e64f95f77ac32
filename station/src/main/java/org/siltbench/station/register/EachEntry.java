package org.siltbench.station.register;

import java.sql.SQLException;
import java.util.List;
import java.util.TreeSet;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Hlc;

/** Walks over entries in merge order, a page at a time. */
final class EachEntry {

  private final Sql sql;
  private final String text;
  private final Object[] values;
  private Place last = new Place(new Hlc(-1, 0), new EntryRef("", 0));

  EachEntry(Sql sql, List<String> kinds, int page) {
    this.sql = sql;
    List<String> wanted = List.copyOf(new TreeSet<>(kinds));
    String filter =
        wanted.isEmpty()
            ? ""
            : "kind in (" + String.join(", ", wanted.stream().map(kind -> "?").toList()) + ") and ";
    this.text =
        "select hlc_ms, hlc_n, bench, seq from entry where "
            + filter
            + "(hlc_ms, hlc_n, bench, seq) > (?, ?, ?, ?)"
            + " order by hlc_ms, hlc_n, bench, seq fetch first "
            + page
            + " rows only";
    this.values = new Object[wanted.size() + 4];
    for (int i = 0; i < wanted.size(); i++) {
      values[i] = wanted.get(i);
    }
  }

  List<EntryRef> next() throws SQLException {
    int at = values.length - 4;
    values[at] = last.hlc().millis();
    values[at + 1] = last.hlc().counter();
    values[at + 2] = last.ref().bench();
    values[at + 3] = last.ref().seq();
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
