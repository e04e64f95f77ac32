package org.siltbench.station.register;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Prepared statements with fixed text, kept open for one connection and one thread. */
final class Sql implements AutoCloseable {

  /** Reads one row. */
  interface Row<T> {
    T read(ResultSet row) throws SQLException;
  }

  private final Connection connection;
  private final Map<String, PreparedStatement> prepared = new HashMap<>();

  Sql(Connection connection) {
    this.connection = connection;
  }

  <T> List<T> list(Row<T> reader, String text, Object... values) throws SQLException {
    try (ResultSet rows = bound(text, values).executeQuery()) {
      List<T> list = new ArrayList<>();
      while (rows.next()) {
        list.add(reader.read(rows));
      }
      return list;
    }
  }

  int update(String text, Object... values) throws SQLException {
    return bound(text, values).executeUpdate();
  }

  private PreparedStatement bound(String text, Object... values) throws SQLException {
    PreparedStatement statement = prepared.get(text);
    if (statement == null) {
      statement = connection.prepareStatement(text);
      prepared.put(text, statement);
    }
    for (int i = 0; i < values.length; i++) {
      statement.setObject(i + 1, values[i]);
    }
    return statement;
  }

  void commit() throws SQLException {
    connection.commit();
  }

  void rollback() throws SQLException {
    connection.rollback();
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
