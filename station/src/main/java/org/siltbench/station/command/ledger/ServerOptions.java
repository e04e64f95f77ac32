package org.siltbench.station.command.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.share.ServerAddress;
import picocli.CommandLine.Option;

/** Where the lab's server is. */
final class ServerOptions {

  @Option(
      names = "--server",
      paramLabel = "JDBC-URL",
      description = "jdbc:postgresql://HOST:PORT/DATABASE; sslmode and sslrootcert may follow")
  @Nullable String server;

  @Option(
      names = "--server-user",
      paramLabel = "ROLE",
      description = "the database role; default: siltbench")
  String user = "siltbench";

  @Option(
      names = "--server-password-file",
      paramLabel = "FILE",
      description = "file with the role's password; else the variable SILTBENCH_DB_PASSWORD")
  @Nullable Path passwordFile;

  Optional<ServerAddress> address(Session session) {
    return server == null
        ? Optional.empty()
        : Optional.of(new ServerAddress(server, user, password(session)));
  }

  ServerAddress needed(Session session) {
    return address(session)
        .orElseThrow(
            () ->
                new Problem.WrongUse(
                    "No server is named.", "Give --server jdbc:postgresql://HOST:PORT/DATABASE."));
  }

  private String password(Session session) {
    if (passwordFile == null) {
      return session.variable("SILTBENCH_DB_PASSWORD").orElse("");
    }
    try (var lines = Files.lines(passwordFile, StandardCharsets.UTF_8)) {
      return lines.findFirst().orElse("");
    } catch (IOException e) {
      throw new Problem.Outside(
          "The password file " + passwordFile + " cannot be read.",
          "Nothing was exchanged.",
          "Check --server-password-file.",
          e);
    }
  }
}
