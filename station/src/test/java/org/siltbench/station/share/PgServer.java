package org.siltbench.station.share;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A real PostgreSQL server: the system's own where there is one, else an embedded one. */
public final class PgServer implements AutoCloseable {

  private final AutoCloseable stop;
  private final int port;

  private PgServer(int port, AutoCloseable stop) {
    this.port = port;
    this.stop = stop;
  }

  public static PgServer start() throws Exception {
    Path bin = newestBin();
    return bin == null ? embedded() : local(bin);
  }

  private static PgServer embedded() throws IOException {
    var server = io.zonky.test.db.postgres.embedded.EmbeddedPostgres.start();
    return new PgServer(server.getPort(), server);
  }

  private static Path newestBin() throws IOException {
    Path root = Path.of("/usr/lib/postgresql");
    if (!Files.isDirectory(root)) {
      return null;
    }
    try (Stream<Path> versions = Files.list(root)) {
      return versions
          .map(version -> version.resolve("bin"))
          .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
          .max(Path::compareTo)
          .orElse(null);
    }
  }

  private static PgServer local(Path bin) throws Exception {
    Path place = Files.createTempDirectory("siltbench-pg");
    Files.setPosixFilePermissions(place, PosixFilePermissions.fromString("rwxrwxrwx"));
    Path data = place.resolve("data");
    boolean root = "root".equals(System.getProperty("user.name"));
    run(
        root,
        bin.resolve("initdb").toString(),
        "-D",
        data.toString(),
        "-U",
        "postgres",
        "-A",
        "trust",
        "-E",
        "UTF8",
        "--no-sync",
        "--locale=C");
    int port = freePort();
    String ssl = certificate(root, place, data);
    String options =
        "-p " + port + " -k " + place + " -c listen_addresses=127.0.0.1 -c fsync=off" + ssl;
    run(
        root,
        bin.resolve("pg_ctl").toString(),
        "-D",
        data.toString(),
        "-w",
        "-l",
        place.resolve("log").toString(),
        "-o",
        options,
        "start");
    return new PgServer(
        port,
        () -> {
          run(
              root,
              bin.resolve("pg_ctl").toString(),
              "-D",
              data.toString(),
              "-m",
              "immediate",
              "stop");
          try (Stream<Path> files = Files.walk(place)) {
            for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
              Files.deleteIfExists(file);
            }
          }
        });
  }

  private static String certificate(boolean root, Path place, Path data) throws Exception {
    if (!Files.isExecutable(Path.of("/usr/bin/openssl"))) {
      return "";
    }
    run(
        root,
        "openssl",
        "req",
        "-x509",
        "-newkey",
        "rsa:2048",
        "-nodes",
        "-days",
        "2",
        "-subj",
        "/CN=localhost",
        "-addext",
        "subjectAltName=DNS:localhost,IP:127.0.0.1",
        "-keyout",
        data.resolve("server.key").toString(),
        "-out",
        data.resolve("server.crt").toString());
    run(root, "chmod", "600", data.resolve("server.key").toString());
    run(root, "cp", data.resolve("server.crt").toString(), place.resolve("root.crt").toString());
    return " -c ssl=on";
  }

  private static void run(boolean root, String... words) throws Exception {
    List<String> command = new ArrayList<>();
    if (root) {
      command.addAll(List.of("runuser", "-u", "postgres", "--"));
    }
    command.addAll(List.of(words));
    Path log = Files.createTempFile("siltbench-run", ".log");
    Process process =
        new ProcessBuilder(command)
            .directory(new java.io.File("/tmp"))
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    if (process.waitFor() != 0) {
      throw new IOException(command + ": " + Files.readString(log));
    }
    Files.delete(log);
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }

  public String url(String database) {
    return "jdbc:postgresql://127.0.0.1:" + port + '/' + database;
  }

  public ServerAddress admin(String database) {
    return new ServerAddress(url(database), "postgres", "");
  }

  public ServerAddress bench(String database) {
    return new ServerAddress(url(database), "bench", "");
  }

  /** A database with the tables, and a role for benches. */
  public void make(String database) throws Exception {
    sql("postgres", "postgres", "create database " + database);
    sql(
        "postgres",
        "postgres",
        "do $$ begin create role bench login; exception when duplicate_object then null; end $$");
    Schema.prepare(admin(database), "bench");
  }

  public void sql(String database, String user, String text) throws Exception {
    try (Connection connection = DriverManager.getConnection(url(database), user, "");
        Statement statement = connection.createStatement()) {
      statement.execute(text);
    }
  }

  /** From now on every role but the administrator's needs its password. */
  public void askForPasswords() throws Exception {
    Path data = data();
    Files.writeString(
        data.resolve("pg_hba.conf"),
        "host all postgres 127.0.0.1/32 trust\nhost all all 127.0.0.1/32 scram-sha-256\n");
    sql("postgres", "postgres", "select pg_reload_conf()");
  }

  /** Gives the server another key and certificate, in PEM. */
  public void show(Path key, Path chain) throws Exception {
    Files.copy(key, data().resolve("server.key"), StandardCopyOption.REPLACE_EXISTING);
    Files.copy(chain, data().resolve("server.crt"), StandardCopyOption.REPLACE_EXISTING);
    var owner = Files.getOwner(data());
    Files.setOwner(data().resolve("server.key"), owner);
    Files.setPosixFilePermissions(
        data().resolve("server.key"), PosixFilePermissions.fromString("rw-------"));
    sql("postgres", "postgres", "select pg_reload_conf()");
  }

  private Path data() throws Exception {
    try (Connection connection = DriverManager.getConnection(url("postgres"), "postgres", "");
        Statement statement = connection.createStatement();
        var row = statement.executeQuery("show data_directory")) {
      row.next();
      return Path.of(row.getString(1));
    }
  }

  /** The certificate that signs the server's, or null where there is none. */
  public Path certificate() throws Exception {
    Path file = data().resolveSibling("root.crt");
    return Files.exists(file) ? file : null;
  }

  @Override
  public void close() throws Exception {
    stop.close();
  }
}
