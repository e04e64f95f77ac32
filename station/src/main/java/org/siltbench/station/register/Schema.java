package org.siltbench.station.register;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.siltbench.station.ledger.Kinds;

/** The tables of the register. A register with another edition is thrown away and made anew. */
final class Schema {

  private static final int VERSION = 3;

  private static final List<String> TABLES =
      List.of(
          "create table edition(text varchar not null)",
          """
          create table position(
            bench varchar(4) primary key, end_at bigint not null, last_at bigint not null,
            seq bigint not null, sum varchar(64) not null,
            hlc_ms bigint not null, hlc_n int not null, trouble varchar not null)\
          """,
          """
          create table entry(
            bench varchar(4) not null, seq bigint not null,
            hlc_ms bigint not null, hlc_n int not null, kind varchar(40) not null,
            at bigint not null, length int not null, primary key(bench, seq))\
          """,
          "create index entry_order on entry(hlc_ms, hlc_n, bench, seq)",
          "create index entry_kind on entry(kind, hlc_ms, hlc_n, bench, seq)",
          """
          create table subject(
            type varchar(40) not null, id varchar not null,
            hlc_ms bigint not null, hlc_n int not null,
            bench varchar(4) not null, seq bigint not null,
            primary key(type, id, hlc_ms, hlc_n, bench, seq))\
          """,
          "create index subject_entry on subject(bench, seq)",
          """
          create table amendment(
            bench varchar(4) not null, seq bigint not null,
            hlc_ms bigint not null, hlc_n int not null,
            by_bench varchar(4) not null, by_seq bigint not null, place int not null,
            changes varchar not null,
            primary key(bench, seq, hlc_ms, hlc_n, by_bench, by_seq, place))\
          """,
          "create index amendment_by on amendment(by_bench, by_seq)",
          """
          create table state(
            type varchar(40) not null, id varchar not null, parent varchar(200) not null,
            status varchar(40) not null, summary varchar not null, primary key(type, id))\
          """,
          "create table unfolded(type varchar(40) not null, id varchar not null, primary key(type,"
              + " id))",
          "create index state_parent on state(type, parent, id)",
          "create index state_status on state(type, status, parent, id)");

  private Schema() {}

  static String edition(Subjects subjects) {
    return "tables " + VERSION + ", subjects " + subjects.version() + ", kinds " + Kinds.edition();
  }

  /** True if the connection has the tables of this edition. */
  static boolean fits(Connection connection, String edition) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet tables =
            statement.executeQuery(
                "select count(*) from information_schema.tables where table_name = 'EDITION'")) {
      if (!tables.next() || tables.getInt(1) != 1) {
        return false;
      }
    }
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("select text from edition")) {
      return row.next() && edition.equals(row.getString(1));
    }
  }

  static void make(Connection connection, String edition) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("drop all objects");
      for (String table : TABLES) {
        statement.execute(table);
      }
    }
    try (var insert = connection.prepareStatement("insert into edition values(?)")) {
      insert.setString(1, edition);
      insert.execute();
    }
    connection.commit();
  }
}
