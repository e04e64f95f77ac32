package org.siltbench.station.share;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.siltbench.station.Problem;

/** The tables on the server: made and brought forward by an administrator, checked by a bench. */
public final class Schema {

  static final String NAME = "siltbench";

  /** The edition of the tables that this version works with. */
  static final int EDITION = 1;

  private static final Logger MIGRATION_LOG = Logger.getLogger("org.flywaydb");
  private static final Pattern ROLE = Pattern.compile("[a-z_][a-z0-9_]{0,62}");

  private Schema() {}

  /**
   * Makes the tables or brings them forward, and lets a role insert and select, nothing else.
   *
   * @param admin an address with the right to make tables
   * @param role the role that benches sign on with; it must exist
   */
  public static void prepare(ServerAddress admin, String role) {
    if (!ROLE.matcher(role).matches()) {
      throw new Problem.WrongUse(
          "\"" + role + "\" is not a role's name.", "Use small letters, digits and underscores.");
    }
    try (Connection connection = admin.connect()) {
      migrate(admin);
      try (Statement statement = connection.createStatement()) {
        statement.execute("grant usage on schema " + NAME + " to " + role);
        statement.execute("grant select, insert on " + NAME + ".ledger_line to " + role);
        statement.execute("grant select on " + NAME + ".ledger_head to " + role);
        statement.execute("grant select on " + NAME + ".schema_edition to " + role);
      }
      connection.commit();
    } catch (SQLException | FlywayException e) {
      throw new Problem.Outside(
          "The server's tables could not be made: " + e.getMessage(),
          "Lines that are on the server were not touched.",
          "The role must exist, and you need the right to make a schema in this database.",
          e);
    }
  }

  private static void migrate(ServerAddress admin) {
    MIGRATION_LOG.setLevel(Level.WARNING);
    Flyway.configure(Schema.class.getClassLoader())
        .dataSource(new Admin(admin))
        .locations("classpath:org/siltbench/station/share/schema")
        .schemas(NAME)
        .defaultSchema(NAME)
        .placeholders(Map.of("schema", NAME))
        .load()
        .migrate();
  }

  /** Refuses a server that this version does not know. */
  static void check(Connection connection) throws SQLException {
    int edition = edition(connection);
    if (edition > EDITION) {
      throw new Problem.Refused(
          "The server's tables have edition %d; this version knows edition %d."
              .formatted(edition, EDITION),
          "Nothing was exchanged; the bench works on.",
          "Update this bench, then share again.");
    }
    if (edition < EDITION) {
      throw new Problem.Refused(
          "The server has no tables for ledgers yet, or this role may not read them.",
          "Nothing was exchanged; the bench works on.",
          "Ask the administrator to run: siltbench share --prepare.");
    }
  }

  private static int edition(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      try (ResultSet there =
          statement.executeQuery(
              "select has_table_privilege(c.oid, 'select') from pg_class c"
                  + " join pg_namespace n on n.oid = c.relnamespace"
                  + " where n.nspname = 'siltbench' and c.relname = 'schema_edition'"
                  + " and has_schema_privilege(n.oid, 'usage')")) {
        if (!there.next() || !there.getBoolean(1)) {
          return 0;
        }
      }
      try (ResultSet row =
          statement.executeQuery("select max(edition) from siltbench.schema_edition")) {
        return row.next() ? row.getInt(1) : 0;
      }
    }
  }
}
