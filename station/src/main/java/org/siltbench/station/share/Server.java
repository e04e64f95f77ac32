package org.siltbench.station.share;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.LineText;

/** One connection to the lab's server. */
final class Server implements AutoCloseable {

  private static final String OTHER_HISTORY = "SB001";

  /** How far a ledger reaches on the server. */
  record Head(long seq, String sum) {}

  private final Connection connection;

  Server(ServerAddress address) throws SQLException {
    connection = address.connect();
    try {
      Schema.check(connection);
    } catch (SQLException | Problem e) {
      connection.close();
      throw e;
    }
  }

  Map<String, Head> heads() throws SQLException {
    Map<String, Head> heads = new TreeMap<>();
    try (PreparedStatement select =
            connection.prepareStatement("select bench, seq, sum from ledger_head");
        ResultSet rows = select.executeQuery()) {
      while (rows.next()) {
        heads.put(text(rows, 1), new Head(rows.getLong(2), text(rows, 3)));
      }
    }
    connection.commit();
    return heads;
  }

  List<String> lines(String bench, long after, int atMost) throws SQLException {
    List<String> lines = new ArrayList<>();
    try (PreparedStatement select =
        connection.prepareStatement(
            "select line from ledger_line where bench = ? and seq > ? order by seq limit ?")) {
      select.setString(1, bench);
      select.setLong(2, after);
      select.setInt(3, atMost);
      try (ResultSet rows = select.executeQuery()) {
        while (rows.next()) {
          lines.add(text(rows, 1));
        }
      }
    }
    connection.commit();
    return lines;
  }

  /** Adds lines, all of them or none; those that are there already are passed over. */
  void add(List<String> lines) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into ledger_line(bench, seq, prev, sum, line) values(?, ?, ?, ?, ?)")) {
      for (String line : lines) {
        LineText.Link link = Exchange.link(line.getBytes(StandardCharsets.UTF_8));
        insert.setString(1, link.bench());
        insert.setLong(2, link.seq());
        insert.setString(3, link.prev());
        insert.setString(4, link.sum());
        insert.setString(5, line);
        insert.addBatch();
      }
      insert.executeBatch();
      connection.commit();
    } catch (SQLException e) {
      connection.rollback();
      if (isOtherHistory(e)) {
        throw Exchange.secondHistory(e);
      }
      throw e;
    }
  }

  /** The tables have no empty fields; another server's may. */
  private static String text(ResultSet row, int column) throws SQLException {
    String text = row.getString(column);
    return text == null ? "" : text;
  }

  private static boolean isOtherHistory(SQLException e) {
    for (SQLException next = e; next != null; next = next.getNextException()) {
      if (OTHER_HISTORY.equals(next.getSQLState())) {
        return true;
      }
    }
    return false;
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
