package org.siltbench.station.share;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** An authority of a lab and the certificates it signs, made with the JDK's keytool. */
public final class Certificates {

  private final Path folder;

  public Certificates(Path folder) throws Exception {
    this.folder = folder;
    keytool("-genkeypair", "-alias", "ca", "-dname", "CN=Lab", "-ext", "bc:c", "-validity", "30");
    keytool("-exportcert", "-rfc", "-alias", "ca", "-file", authority().toString());
  }

  public Path authority() {
    return folder.resolve("ca.pem");
  }

  public Path key(String alias) {
    return folder.resolve(alias + ".key");
  }

  public Path chain(String alias) {
    return folder.resolve(alias + ".crt");
  }

  /** A server's certificate, valid from so many days ago, for so many days. */
  public void server(String alias, String host, int daysAgo, int days) throws Exception {
    keytool("-genkeypair", "-alias", alias, "-dname", "CN=" + host);
    Path request = folder.resolve(alias + ".csr");
    keytool("-certreq", "-alias", alias, "-file", request.toString());
    keytool(
        "-gencert",
        "-rfc",
        "-alias",
        "ca",
        "-infile",
        request.toString(),
        "-outfile",
        chain(alias).toString(),
        "-ext",
        "san=dns:" + host,
        "-startdate",
        "-" + daysAgo + "d",
        "-validity",
        Integer.toString(days));
    run(
        List.of(
            "openssl",
            "pkcs12",
            "-in",
            store().toString(),
            "-passin",
            "pass:changeit",
            "-nodes",
            "-nocerts",
            "-out",
            folder.resolve("all.key").toString()));
    Files.writeString(key(alias), only(alias, Files.readString(folder.resolve("all.key"))));
  }

  /** The one key of several in an export. */
  private static String only(String alias, String all) {
    int name = all.indexOf("friendlyName: " + alias);
    int from = all.indexOf("-----BEGIN", name);
    int to = all.indexOf("-----END PRIVATE KEY-----", from);
    return all.substring(from, to) + "-----END PRIVATE KEY-----\n";
  }

  private Path store() {
    return folder.resolve("store.p12");
  }

  private void keytool(String... words) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "keytool").toString());
    command.addAll(List.of(words));
    command.addAll(List.of("-keystore", store().toString(), "-storepass", "changeit"));
    if (words[0].equals("-genkeypair")) {
      command.addAll(List.of("-keyalg", "RSA", "-keysize", "2048", "-storetype", "PKCS12"));
    }
    run(command);
  }

  private void run(List<String> command) throws Exception {
    Path log = folder.resolve("log");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    if (process.waitFor() != 0) {
      throw new IOException(command + ": " + Files.readString(log));
    }
  }
}
