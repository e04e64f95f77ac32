package org.siltbench.station.share;

import java.io.PrintWriter;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.SQLFeatureNotSupportedException;
import java.util.Properties;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** The administrator's connections, with the same encryption as a bench's. */
final class Admin implements DataSource {

  private final ServerAddress address;

  Admin(ServerAddress address) {
    this.address = address;
  }

  @Override
  public Connection getConnection() throws SQLException {
    Properties properties = address.properties();
    properties.remove("currentSchema");
    return DriverManager.getConnection(address.url(), properties);
  }

  @Override
  public Connection getConnection(String user, String password) throws SQLException {
    return getConnection();
  }

  @Override
  public @Nullable PrintWriter getLogWriter() {
    return null;
  }

  @Override
  public void setLogWriter(@Nullable PrintWriter out) throws SQLException {
    throw new SQLFeatureNotSupportedException("no log");
  }

  @Override
  public void setLoginTimeout(int seconds) throws SQLException {
    throw new SQLFeatureNotSupportedException("the time-out is fixed");
  }

  @Override
  public int getLoginTimeout() {
    return 10;
  }

  @Override
  public Logger getParentLogger() throws SQLFeatureNotSupportedException {
    throw new SQLFeatureNotSupportedException("no log");
  }

  @Override
  public <T> T unwrap(Class<T> type) throws SQLException {
    throw new SQLFeatureNotSupportedException("nothing is wrapped");
  }

  @Override
  public boolean isWrapperFor(Class<?> type) {
    return false;
  }
}
