package org.siltbench.station.register;

import java.io.IOException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.siltbench.station.json.Json;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Line;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * Takes entries in, in any order, and keeps index, amendments and folded rows what they would be
 * had the entries come in merge order. An amending entry is also about whatever the amended entry
 * is about, before and after.
 */
final class Folding {

  private static final int LONG = 300;

  private final Sql sql;
  private final Subjects subjects;
  private final Entries entries;
  private final Consumer<Words> notes;
  private final Set<Subject> stale = new LinkedHashSet<>();

  Folding(Sql sql, Subjects subjects, Entries entries, Consumer<Words> notes) {
    this.sql = sql;
    this.subjects = subjects;
    this.entries = entries;
    this.notes = notes;
  }

  void add(Line line) throws SQLException, IOException {
    Entry entry = line.entry();
    sql.update(
        "insert into entry values(?, ?, ?, ?, ?, ?, ?)",
        entry.ref().bench(),
        entry.ref().seq(),
        entry.hlc().millis(),
        entry.hlc().counter(),
        entry.kind(),
        line.at(),
        line.length());
    refresh(entry, true);
  }

  private void refresh(Entry written, boolean fresh) throws SQLException, IOException {
    Entry effective = entries.effective(written);
    Set<EntryRef> amended = amend(effective, fresh);
    index(written, effective, fresh, true);
    for (EntryRef target : amended) {
      Optional<Entry> earlier = entries.written(target);
      if (earlier.isPresent() && Place.of(earlier.get()).compareTo(Place.of(written)) < 0) {
        refresh(earlier.get(), false);
      }
    }
  }

  /** Stores what an entry amends; returns the entries amended before or now. */
  private Set<EntryRef> amend(Entry effective, boolean fresh) throws SQLException {
    EntryRef by = effective.ref();
    Set<EntryRef> touched = new LinkedHashSet<>();
    if (!fresh) {
      touched.addAll(targets(by));
      sql.update("delete from amendment where by_bench = ? and by_seq = ?", by.bench(), by.seq());
    }
    int place = 0;
    for (Amendment amendment : understood(effective.ref(), () -> subjects.amendments(effective))) {
      sql.update(
          "insert into amendment values(?, ?, ?, ?, ?, ?, ?, ?)",
          amendment.target().bench(),
          amendment.target().seq(),
          effective.hlc().millis(),
          effective.hlc().counter(),
          by.bench(),
          by.seq(),
          place++,
          Json.write(amendment.set()));
      touched.add(amendment.target());
    }
    return touched;
  }

  private List<EntryRef> targets(EntryRef by) throws SQLException {
    return sql.list(
        row -> new EntryRef(row.getString(1), row.getLong(2)),
        "select distinct bench, seq from amendment where by_bench = ? and by_seq = ?",
        by.bench(),
        by.seq());
  }

  private void index(Entry written, Entry effective, boolean fresh, boolean changed)
      throws SQLException, IOException {
    Set<Subject> after = about(effective);
    Set<Subject> before = fresh ? Set.of() : indexed(written.ref());
    if (changed) {
      stale.addAll(before);
      stale.addAll(after);
    }
    if (!before.equals(after)) {
      store(written, before, after);
    }
    for (Entries.Change change : entries.changes(written)) {
      Optional<Entry> amending = entries.written(change.by().ref());
      if (amending.isPresent()) {
        index(amending.get(), entries.effective(amending.get()), false, !before.equals(after));
      }
    }
  }

  private void store(Entry entry, Set<Subject> before, Set<Subject> after) throws SQLException {
    stale.addAll(before);
    stale.addAll(after);
    EntryRef ref = entry.ref();
    if (!before.isEmpty()) {
      sql.update("delete from subject where bench = ? and seq = ?", ref.bench(), ref.seq());
    }
    for (Subject subject : after) {
      sql.update(
          "insert into subject values(?, ?, ?, ?, ?, ?)",
          subject.type(),
          subject.id(),
          entry.hlc().millis(),
          entry.hlc().counter(),
          ref.bench(),
          ref.seq());
    }
  }

  private Set<Subject> indexed(EntryRef ref) throws SQLException {
    return new HashSet<>(
        sql.list(
            row -> new Subject(row.getString(1), row.getString(2)),
            "select type, id from subject where bench = ? and seq = ?",
            ref.bench(),
            ref.seq()));
  }

  private Set<Subject> about(Entry effective) throws SQLException, IOException {
    Set<Subject> about =
        new HashSet<>(understoodSet(effective.ref(), () -> subjects.of(effective)));
    for (EntryRef target : targets(effective.ref())) {
      Optional<Entry> amended = entries.written(target);
      if (amended.isPresent() && Place.of(amended.get()).compareTo(Place.of(effective)) < 0) {
        about.addAll(understoodSet(target, () -> subjects.of(amended.get())));
        about.addAll(about(entries.effective(amended.get())));
      }
    }
    return about;
  }

  private Set<Subject> understoodSet(EntryRef ref, Supplier<Set<Subject>> question) {
    return Set.copyOf(understood(ref, () -> new ArrayList<>(question.get())));
  }

  /** One entry that makes no sense must not stop the register. */
  private <T> List<T> understood(EntryRef ref, Supplier<List<T>> question) {
    try {
      return question.get();
    } catch (RuntimeException e) {
      notes.accept(Said.of(RegisterSays.NO_SENSE, ref, e));
      return List.of();
    }
  }

  /**
   * Folds the subjects touched since the last time. One with a long history, such as a balance with
   * years of checks, is only noted, and folded when it is asked for.
   */
  void fold() throws SQLException, IOException {
    for (Subject subject : stale) {
      if (isLong(subject)) {
        sql.update("merge into unfolded key(type, id) values(?, ?)", subject.type(), subject.id());
      } else {
        fold(subject);
      }
    }
    stale.clear();
  }

  private boolean isLong(Subject subject) throws SQLException {
    return !sql.list(
            row -> row.getLong(1),
            "select seq from subject where type = ? and id = ? offset ? rows fetch first row only",
            subject.type(),
            subject.id(),
            LONG)
        .isEmpty();
  }

  private void fold(Subject subject) throws SQLException, IOException {
    List<Entry> history = history(subject);
    Optional<StateRow> row = history.isEmpty() ? Optional.empty() : folded(subject, history);
    if (row.isPresent()) {
      put(row.get());
    } else {
      sql.update("delete from state where type = ? and id = ?", subject.type(), subject.id());
    }
  }

  /** Folds what was put off; an empty type or id stands for any. */
  void foldLong(String type, String id) throws SQLException, IOException {
    List<Subject> late =
        sql.list(
            row -> new Subject(row.getString(1), row.getString(2)),
            "select type, id from unfolded where (? = '' or type = ?) and (? = '' or id = ?)",
            type,
            type,
            id,
            id);
    for (Subject subject : late) {
      fold(subject);
      sql.update("delete from unfolded where type = ? and id = ?", subject.type(), subject.id());
    }
    if (!late.isEmpty()) {
      sql.commit();
    }
  }

  void forget() {
    stale.clear();
    entries.forgetAll();
  }

  private Optional<StateRow> folded(Subject subject, List<Entry> history) {
    try {
      return subjects.fold(subject, history);
    } catch (RuntimeException e) {
      notes.accept(Said.of(RegisterSays.NOT_LISTED, subject.type(), subject.id(), e));
      return Optional.empty();
    }
  }

  private void put(StateRow row) throws SQLException {
    sql.update(
        "merge into state key(type, id) values(?, ?, ?, ?, ?)",
        row.subject().type(),
        row.subject().id(),
        row.parent(),
        row.status(),
        row.summary());
  }

  List<Entry> history(Subject subject) throws SQLException, IOException {
    List<EntryRef> refs =
        sql.list(
            row -> new EntryRef(row.getString(1), row.getLong(2)),
            """
            select bench, seq from subject where type = ? and id = ?
            order by hlc_ms, hlc_n, bench, seq""",
            subject.type(),
            subject.id());
    List<Entry> history = new ArrayList<>(refs.size());
    for (EntryRef ref : refs) {
      entries.effective(ref).ifPresent(history::add);
    }
    return history;
  }
}
