package org.siltbench.station.command.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.share.Certificates;
import org.siltbench.station.share.PgServer;

/** The commands against a real PostgreSQL server, over TLS, with passwords. */
class ServerCommandsIT {

  private static PgServer pg;
  private static Certificates certificates;
  @TempDir static Path shared;
  @TempDir Path folder;

  @BeforeAll
  static void start() throws Exception {
    pg = PgServer.start();
    certificates = new Certificates(shared);
    certificates.server("good", "localhost", 1, 30);
    certificates.server("old", "localhost", 10, 5);
    certificates.server("other", "elsewhere.example.org", 1, 30);
    pg.show(certificates.key("good"), certificates.chain("good"));
    pg.sql("postgres", "postgres", "create role siltbench login password 'river'");
    pg.sql("postgres", "postgres", "create database lab");
    pg.askForPasswords();
    CommandLab admin = new CommandLab(shared.resolve("admin"));
    admin.ok(
        "share", "--prepare", "--server", pg.url("lab"), "--server-user", "postgres", "--json");
    assertEquals(true, admin.document().get("prepared"));
    Files.writeString(shared.resolve("password"), "river\n");
    Files.writeString(shared.resolve("wrong"), "brook\n");
  }

  @AfterAll
  static void stop() throws Exception {
    pg.close();
  }

  private static String tls(String database) {
    return pg.url(database).replace("127.0.0.1", "localhost")
        + "?sslmode=verify-full&sslrootcert="
        + certificates.authority();
  }

  private static String[] at(String url, String password, String... words) {
    String[] all = java.util.Arrays.copyOf(words, words.length + 4);
    all[words.length] = "--server";
    all[words.length + 1] = url;
    all[words.length + 2] = "--server-password-file";
    all[words.length + 3] = shared.resolve(password).toString();
    return all;
  }

  private CommandLab lab(String name) {
    CommandLab lab = new CommandLab(folder.resolve(name));
    lab.ok("lab", "new", "--name", name);
    lab.ok("room", "--temperature", "20.5");
    return lab;
  }

  @Test
  void twoBenchesShareVerifyAgainstTheServerAndALostOneIsRestored() throws Exception {
    pg.show(certificates.key("good"), certificates.chain("good"));
    CommandLab north = lab("north");
    CommandLab south = lab("south");
    assertEquals(
        2L, north.ok(at(tls("lab"), "password", "share", "--json")).document().get("sent"));
    Map<String, Object> done = south.ok(at(tls("lab"), "password", "share", "--json")).document();
    assertEquals(2L, done.get("sent"));
    assertTrue((Long) done.get("received") >= 2, done.toString());
    north.ok(at(tls("lab"), "password", "verify", "--json"));
    assertEquals(true, north.document().get("ok"));
    List<?> anchors = (List<?>) north.document().get("anchors");
    assertTrue(anchors.toString().contains("kind=server"), anchors.toString());

    String code = (String) north.document().get("bench");
    Path ledger = north.folder().resolve("ledger").resolve(code + ".jsonl");
    Files.writeString(ledger, Files.readAllLines(ledger).get(0) + "\n");
    assertEquals(1, north.run(at(tls("lab"), "password", "verify")));
    assertTrue(north.out().contains("MISSING: server"), north.out());

    CommandLab again = new CommandLab(folder.resolve("again"));
    again.ok(at(tls("lab"), "password", "restore", "--bench", code, "--json"));
    assertFalse(code.equals(again.document().get("bench")));
    assertEquals(true, again.ok("verify", "--json").document().get("ok"));
    Path restored = again.folder().resolve("ledger").resolve(code + ".jsonl");
    assertEquals(2, Files.readAllLines(restored).size());
  }

  @Test
  void aWrongPasswordAMissingDatabaseAndAServerAwayAreTold() throws Exception {
    pg.show(certificates.key("good"), certificates.chain("good"));
    CommandLab lab = lab("lab");
    told(lab, at(tls("lab"), "wrong", "share"), "does not let the role siltbench in");
    told(lab, at(tls("none"), "password", "share"), "no database of this name");
    told(lab, at("jdbc:postgresql://127.0.0.1:1/lab", "password", "share"), "does not answer");
    assertFalse(lab.err().contains("river"));
    lab.ok("room", "--temperature", "21");
  }

  @Test
  void aServerThatCannotProveItselfGetsNothing() throws Exception {
    CommandLab lab = lab("lab");
    pg.show(certificates.key("old"), certificates.chain("old"));
    told(lab, at(tls("lab"), "password", "share"), "out of date");
    pg.show(certificates.key("other"), certificates.chain("other"));
    told(lab, at(tls("lab"), "password", "share"), "cannot prove who it is");
    pg.show(certificates.key("good"), certificates.chain("good"));
    Path stranger = Files.createDirectory(folder.resolve("stranger"));
    String url =
        tls("lab")
            .replace(
                certificates.authority().toString(),
                new Certificates(stranger).authority().toString());
    told(lab, at(url, "password", "share"), "cannot prove who it is");
    told(lab, at(url, "password", "verify"), "cannot prove who it is");
  }

  private static void told(CommandLab lab, String[] words, String what) {
    assertEquals(3, lab.run(words), lab.err());
    assertTrue(lab.err().contains(what), lab.err());
    assertTrue(lab.err().contains("Nothing is lost"), lab.err());
  }

  @Test
  void anOldBenchRefusesANewerServerAndWorksOn() throws Exception {
    pg.show(certificates.key("good"), certificates.chain("good"));
    pg.sql("postgres", "postgres", "create database newer");
    CommandLab admin = new CommandLab(folder.resolve("admin"));
    admin.ok("share", "--prepare", "--server", pg.url("newer"), "--server-user", "postgres");
    pg.sql("newer", "postgres", "insert into siltbench.schema_edition values (2)");
    CommandLab lab = lab("lab");
    for (String[] words :
        List.of(new String[] {"share"}, new String[] {"restore", "--bench", "BBBB"})) {
      assertEquals(1, lab.run(at(tls("newer"), "password", words)));
      assertTrue(lab.err().contains("edition 2") || lab.err().contains("already"), lab.err());
    }
    lab.ok("room", "--temperature", "21");
  }
}
