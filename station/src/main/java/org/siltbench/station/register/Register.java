package org.siltbench.station.register;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Hlc;
import org.siltbench.station.ledger.Line;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.said.Words;

/**
 * The answer book. Used by one thread at a time; an interrupt does it no harm. Whatever goes wrong
 * inside is a {@link RegisterFailed}: then it is thrown away and made anew.
 */
public final class Register implements RegisterView, AutoCloseable {

  private static final int PAGE = 500;

  private final Sql sql;
  private final Entries entries;
  private final Folding folding;

  private Register(
      Connection connection, Subjects subjects, LineSource lines, Consumer<Words> notes) {
    this.sql = new Sql(connection);
    this.entries = new Entries(sql, lines);
    this.folding = new Folding(sql, subjects, entries, notes);
  }

  /** Opens the register file, or makes it new where it is missing or of another edition. */
  public static Register inFile(
      Path file, Subjects subjects, LineSource lines, Consumer<Words> notes) {
    return opened(H2.file(file), subjects, lines, notes);
  }

  /** An empty register in memory. */
  public static Register inMemory(Subjects subjects, LineSource lines, Consumer<Words> notes) {
    return opened(H2.MEMORY, subjects, lines, notes);
  }

  private static Register opened(
      String url, Subjects subjects, LineSource lines, Consumer<Words> notes) {
    try {
      Connection connection = DriverManager.getConnection(url, "sa", "");
      connection.setAutoCommit(false);
      String edition = Schema.edition(subjects);
      if (!Schema.fits(connection, edition)) {
        Schema.make(connection, edition);
      }
      return new Register(connection, subjects, lines, notes);
    } catch (SQLException e) {
      throw new RegisterFailed("the register cannot be opened", e);
    }
  }

  /** How far each ledger was applied. */
  public Map<String, Position> positions() {
    return asked(
        () -> {
          Map<String, Position> positions = new LinkedHashMap<>();
          for (Position position :
              sql.list(
                  row ->
                      new Position(
                          row.getString(1),
                          row.getLong(2),
                          row.getLong(3),
                          row.getLong(4),
                          row.getString(5),
                          new Hlc(row.getLong(6), row.getInt(7)),
                          row.getString(8)),
                  "select * from position order by bench")) {
            positions.put(position.bench(), position);
          }
          return positions;
        });
  }

  /** Applies lines of one ledger and notes how far it was read, in one transaction. */
  public void apply(List<Line> lines, Position position) {
    asked(
        () -> {
          try {
            for (Line line : lines) {
              folding.add(line);
            }
            folding.fold();
            note(position);
            sql.commit();
            return lines.size();
          } catch (SQLException | IOException | RuntimeException e) {
            folding.forget();
            sql.rollback();
            throw e;
          }
        });
  }

  private void note(Position position) throws SQLException {
    sql.update(
        "merge into position key(bench) values(?, ?, ?, ?, ?, ?, ?, ?)",
        position.bench(),
        position.end(),
        position.lastAt(),
        position.seq(),
        position.sum(),
        position.hlc().millis(),
        position.hlc().counter(),
        position.trouble());
  }

  @Override
  public List<Entry> history(Subject subject) {
    return asked(() -> folding.history(subject));
  }

  @Override
  public Optional<Entry> entry(EntryRef ref) {
    return asked(() -> entries.effective(ref));
  }

  @Override
  public Optional<Entry> asWritten(EntryRef ref) {
    return asked(() -> entries.written(ref));
  }

  @Override
  public List<Entry> amendmentsOf(EntryRef ref) {
    return asked(
        () -> {
          List<Entry> amending = new ArrayList<>();
          Optional<Entry> written = entries.written(ref);
          if (written.isPresent()) {
            for (Entries.Change change : entries.changes(written.get())) {
              entries
                  .effective(change.by().ref())
                  .filter(entry -> !amending.contains(entry))
                  .ifPresent(amending::add);
            }
          }
          return amending;
        });
  }

  @Override
  public Optional<StateRow> state(Subject subject) {
    return asked(
        () -> {
          folding.foldLong(subject.type(), subject.id());
          return sql
              .list(
                  Register::row,
                  "select * from state where type = ? and id = ?",
                  subject.type(),
                  subject.id())
              .stream()
              .findFirst();
        });
  }

  @Override
  public List<StateRow> list(String type, String parent, String status) {
    return asked(
        () -> {
          folding.foldLong(type, "");
          if (!parent.isEmpty()) {
            List<StateRow> rows =
                sql.list(
                    Register::row,
                    "select * from state where type = ? and parent = ? order by id",
                    type,
                    parent);
            return rows.stream()
                .filter(row -> status.isEmpty() || row.status().equals(status))
                .toList();
          }
          return status.isEmpty()
              ? sql.list(Register::row, "select * from state where type = ? order by id", type)
              : sql.list(
                  Register::row,
                  "select * from state where type = ? and status = ? order by id",
                  type,
                  status);
        });
  }

  @Override
  public Map<String, Integer> counts(String type, String status) {
    return asked(
        () -> {
          folding.foldLong(type, "");
          Map<String, Integer> counts = new LinkedHashMap<>();
          sql.list(
                  row -> Map.entry(row.getString(1), row.getInt(2)),
                  "select parent, count(*) from state where type = ? and status = ?"
                      + " group by parent order by parent",
                  type,
                  status)
              .forEach(one -> counts.put(one.getKey(), one.getValue()));
          return counts;
        });
  }

  private static StateRow row(java.sql.ResultSet row) throws SQLException {
    return new StateRow(
        new Subject(row.getString(1), row.getString(2)),
        row.getString(3),
        row.getString(4),
        row.getString(5));
  }

  @Override
  public void each(Consumer<Entry> visitor, String... kinds) {
    since(0, visitor, kinds);
  }

  @Override
  public void since(long millis, Consumer<Entry> visitor, String... kinds) {
    asked(
        () -> {
          EachEntry pages = new EachEntry(sql, millis, List.of(kinds), PAGE);
          for (List<EntryRef> page = pages.next(); !page.isEmpty(); page = pages.next()) {
            for (EntryRef ref : page) {
              entries.effective(ref).ifPresent(visitor);
            }
          }
          return true;
        });
  }

  /** Lines of one ledger as written, from the entry after the given one. */
  public List<String> lines(String bench, long after, int atMost) {
    return asked(() -> entries.lines(bench, after, atMost));
  }

  /** How many entries it holds. */
  public long count() {
    return asked(() -> sql.list(row -> row.getLong(1), "select count(*) from entry").get(0));
  }

  /** Writes everything out in a fixed order, whatever the order of arrival was. */
  public void export(Appendable out) {
    asked(
        () -> {
          folding.foldLong("", "");
          new Export(sql, this, out).write();
          return true;
        });
  }

  /** A question that may fail in the database or in the ledger files. */
  private interface Question<T> {
    T ask() throws SQLException, IOException;
  }

  private static <T> T asked(Question<T> question) {
    try {
      return question.ask();
    } catch (SQLException | IOException e) {
      throw new RegisterFailed("the register cannot be used", e);
    }
  }

  /** The database waits for threads of its own, and would forget an interrupt that comes before. */
  @Override
  public void close() {
    boolean interrupted = Thread.interrupted();
    try {
      asked(
          () -> {
            sql.close();
            return true;
          });
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
