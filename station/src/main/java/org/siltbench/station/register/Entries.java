package org.siltbench.station.register;

import java.io.IOException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Hlc;

/** Entries as written and with their amendments laid over. */
final class Entries {

  private static final int CACHED = 4096;

  /** Where the line of an entry stands. */
  private record Spot(long at, int length) {}

  private final Sql sql;
  private final LineSource lines;
  private final Map<EntryRef, Entry> effective =
      new LinkedHashMap<>(256, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(
            Map.Entry<EntryRef, org.siltbench.station.ledger.Entry> eldest) {
          return size() > CACHED;
        }
      };

  Entries(Sql sql, LineSource lines) {
    this.sql = sql;
    this.lines = lines;
  }

  Optional<Entry> written(EntryRef ref) throws SQLException, IOException {
    List<Spot> spots =
        sql.list(
            row -> new Spot(row.getLong(1), row.getInt(2)),
            "select at, length from entry where bench = ? and seq = ?",
            ref.bench(),
            ref.seq());
    return spots.isEmpty()
        ? Optional.empty()
        : Optional.of(lines.entry(ref.bench(), spots.get(0).at(), spots.get(0).length()));
  }

  Optional<Entry> effective(EntryRef ref) throws SQLException, IOException {
    Entry known = effective.get(ref);
    if (known != null) {
      return Optional.of(known);
    }
    Optional<Entry> written = written(ref);
    return written.isEmpty() ? written : Optional.of(effective(written.get()));
  }

  List<String> lines(String bench, long after, int atMost) throws SQLException, IOException {
    List<Spot> spots =
        sql.list(
            row -> new Spot(row.getLong(1), row.getInt(2)),
            "select at, length from entry where bench = ? and seq > ? order by seq fetch first ? rows only",
            bench,
            after,
            atMost);
    List<String> texts = new ArrayList<>(spots.size());
    for (Spot spot : spots) {
      texts.add(lines.text(bench, spot.at(), spot.length()));
    }
    return texts;
  }

  /** Lays the amendments over an entry as written. */
  Entry effective(Entry written) throws SQLException {
    Map<String, @Nullable Object> data = new LinkedHashMap<>(written.data());
    for (Change change : changes(written)) {
      change.set().forEach((name, value) -> set(data, name, value));
    }
    Entry entry =
        new Entry(
            written.v(),
            written.ref(),
            written.at(),
            written.hlc(),
            written.by(),
            written.kind(),
            written.kv(),
            written.must(),
            data);
    effective.put(written.ref(), entry);
    return entry;
  }

  private static void set(Map<String, @Nullable Object> data, String name, @Nullable Object value) {
    if (value == null) {
      data.remove(name);
    } else {
      data.put(name, value);
    }
  }

  void forget(EntryRef ref) {
    effective.remove(ref);
  }

  void forgetAll() {
    effective.clear();
  }

  /** What one amending entry sets in another. */
  record Change(Place by, Map<String, @Nullable Object> set) {}

  /** What amends an entry, in merge order; only later entries can amend earlier ones. */
  List<Change> changes(Entry written) throws SQLException {
    List<Change> all =
        sql.list(
            row ->
                new Change(
                    new Place(
                        new Hlc(row.getLong(1), row.getInt(2)),
                        new EntryRef(row.getString(3), row.getLong(4))),
                    object(row.getString(5))),
            """
            select hlc_ms, hlc_n, by_bench, by_seq, changes from amendment
            where bench = ? and seq = ? order by hlc_ms, hlc_n, by_bench, by_seq, place""",
            written.ref().bench(),
            written.ref().seq());
    if (all.isEmpty()) {
      return all;
    }
    Place own = Place.of(written);
    List<Change> later = new ArrayList<>(all);
    later.removeIf(change -> change.by().compareTo(own) <= 0);
    return later;
  }

  private static Map<String, @Nullable Object> object(String text) {
    try {
      return Json.object(text);
    } catch (NotJson e) {
      throw new RegisterFailed("an amendment in the register is damaged", e);
    }
  }
}
