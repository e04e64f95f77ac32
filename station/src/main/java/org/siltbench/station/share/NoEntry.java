package org.siltbench.station.share;

import java.security.cert.CertificateExpiredException;
import java.security.cert.CertificateNotYetValidException;
import java.sql.SQLException;
import javax.net.ssl.SSLException;
import org.siltbench.station.Problem;

/** Why a server cannot be spoken to, as far as it can be told. */
final class NoEntry {

  private static final String SAFE = "Nothing is lost: the bench works on without it.";

  private NoEntry() {}

  static Problem.Outside because(ServerAddress address, SQLException e) {
    String state = String.valueOf(e.getSQLState());
    if (state.startsWith("28")) {
      return problem(
          "The server %s does not let the role %s in.".formatted(address.plain(), address.user()),
          "Check the role and its password, then share again.",
          e);
    }
    if (state.equals("3D000")) {
      return problem(
          "The server has no database of this name: " + address.plain() + '.',
          "Check the address, then share again.",
          e);
    }
    if (isCausedBy(e, CertificateExpiredException.class)
        || isCausedBy(e, CertificateNotYetValidException.class)) {
      return problem(
          "The certificate of the server %s is out of date.".formatted(address.plain()),
          "Check this computer's clock; else ask the administrator for a new certificate.",
          e);
    }
    if (isCausedBy(e, SSLException.class) || message(e).contains("could not be verified")) {
      return problem(
          "The server %s cannot prove who it is: %s".formatted(address.plain(), message(e)),
          "Give the certificate of your lab's authority with sslrootcert=FILE; the address must"
              + " be the name in the server's certificate.",
          e);
    }
    return problem(
        "The server %s does not answer: %s".formatted(address.plain(), message(e)),
        "Check the cable and the address; then share again.",
        e);
  }

  private static Problem.Outside problem(String what, String next, SQLException e) {
    return new Problem.Outside(what, SAFE, next, e);
  }

  private static String message(SQLException e) {
    return String.valueOf(e.getMessage());
  }

  private static boolean isCausedBy(Throwable e, Class<? extends Throwable> kind) {
    Throwable cause = e;
    for (int depth = 0; cause != null && depth < 20; depth++) {
      if (kind.isInstance(cause)) {
        return true;
      }
      cause = cause.getCause();
    }
    return false;
  }
}
