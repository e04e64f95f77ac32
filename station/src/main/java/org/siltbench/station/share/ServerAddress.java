package org.siltbench.station.share;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import org.siltbench.station.Problem;

/**
 * Where the lab's server is and who asks.
 *
 * @param url {@code jdbc:postgresql://HOST[:PORT]/DATABASE[?sslmode=…&sslrootcert=…]}
 * @param user the database role
 * @param password its password, from a file or the environment; may be empty
 */
public record ServerAddress(String url, String user, String password) {

  private static final String START = "jdbc:postgresql://";
  private static final Set<String> TAKEN =
      Set.of("sslmode", "sslrootcert", "sslcert", "sslkey", "connecttimeout", "sockettimeout");

  /** Refuses what is no PostgreSQL address, and settings that have no place in one. */
  public ServerAddress {
    if (!url.startsWith(START) || url.indexOf('/', START.length()) < 0) {
      throw wrong("\"" + shown(url) + "\" is not the address of a PostgreSQL server.");
    }
    int query = url.indexOf('?');
    for (String setting : (query < 0 ? "" : url.substring(query + 1)).split("&")) {
      String name = setting.split("=", 2)[0].toLowerCase(Locale.ROOT);
      if (!name.isEmpty() && !TAKEN.contains(name)) {
        throw wrong("The address has the setting \"" + shown(name) + "\", which is not taken.");
      }
    }
  }

  private static String shown(String url) {
    String bare = url.split("\\?", 2)[0];
    return bare.length() > 80 ? bare.substring(0, 80) + "…" : bare;
  }

  private static Problem.WrongUse wrong(String what) {
    return new Problem.WrongUse(
        what,
        "Give jdbc:postgresql://HOST:PORT/DATABASE; sslmode and sslrootcert may follow. The"
            + " password comes from a file or from SILTBENCH_DB_PASSWORD.");
  }

  /** The address without settings, for people. */
  public String plain() {
    return shown(url);
  }

  Connection connect() {
    try {
      Connection connection = DriverManager.getConnection(url, properties());
      connection.setAutoCommit(false);
      return connection;
    } catch (SQLException e) {
      throw NoEntry.because(this, e);
    }
  }

  /** Beyond this computer the line is encrypted and the server proves who it is. */
  Properties properties() {
    Properties properties = new Properties();
    properties.setProperty("user", user);
    if (!password.isEmpty()) {
      properties.setProperty("password", password);
    }
    if (!url.toLowerCase(Locale.ROOT).contains("sslmode=") && !isHere()) {
      properties.setProperty("sslmode", "verify-full");
    }
    properties.setProperty("connectTimeout", "10");
    properties.setProperty("socketTimeout", "120");
    properties.setProperty("maxResultBuffer", "256M");
    properties.setProperty("currentSchema", Schema.NAME);
    properties.setProperty("ApplicationName", "siltbench");
    return properties;
  }

  private boolean isHere() {
    String host = url.substring(START.length());
    return host.startsWith("localhost:")
        || host.startsWith("localhost/")
        || host.startsWith("127.0.0.1:")
        || host.startsWith("127.0.0.1/")
        || host.startsWith("[::1]");
  }

  @Override
  public String toString() {
    return plain() + " as " + user;
  }
}
