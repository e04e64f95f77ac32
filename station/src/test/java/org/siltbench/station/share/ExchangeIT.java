package org.siltbench.station.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.siltbench.station.bench.Labs.correction;
import static org.siltbench.station.bench.Labs.weighing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Labs;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.register.Subject;

class ExchangeIT {

  private static PgServer pg;
  private static int databases;

  @TempDir Path folder;

  @BeforeAll
  static void start() throws Exception {
    pg = PgServer.start();
  }

  @AfterAll
  static void stop() throws Exception {
    pg.close();
  }

  private static String database() throws Exception {
    String name = "lab" + databases++;
    pg.make(name);
    return name;
  }

  private static Exchange.Exchanged share(String database, OpenLab lab) {
    return Exchange.with(pg.bench(database), lab, done -> {});
  }

  @Test
  void aFilterWeighedOnOneBenchIsKnownOnTheOtherAndBothWeighingsAreKept() throws Exception {
    String database = database();
    try (OpenLab north = new Labs(1).create(folder.resolve("north"));
        OpenLab south = new Labs(2).create(folder.resolve("south"))) {
      north.act(view -> List.of(weighing("F1", "0.1")));
      south.act(view -> List.of(weighing("F1", "0.2")));
      assertEquals(new Exchange.Exchanged(2, 0, List.of()), share(database, north));
      assertEquals(new Exchange.Exchanged(2, 2, List.of()), share(database, south));
      assertEquals(new Exchange.Exchanged(0, 2, List.of()), share(database, north));
      assertEquals(new Exchange.Exchanged(0, 0, List.of()), share(database, north));
      assertEquals(2, north.register().history(new Subject("filter", "F1")).size());
      assertEquals(Labs.export(north), Labs.export(south));
    }
    VerifyLab.Report report =
        VerifyLab.of(folder.resolve("north"), Exchange.anchors(pg.bench(database)));
    assertTrue(report.ok(), report.problems().toString());
    assertEquals(3, report.anchors().size());
  }

  @Test
  void theBenchRoleCanNeitherChangeNorRemoveLines() throws Exception {
    String database = database();
    try (OpenLab north = new Labs(1).create(folder.resolve("north"))) {
      share(database, north);
    }
    for (String text :
        List.of(
            "update siltbench.ledger_line set line = ''",
            "delete from siltbench.ledger_line",
            "truncate siltbench.ledger_line",
            "drop table siltbench.ledger_line",
            "update siltbench.ledger_head set seq = 0",
            "insert into siltbench.ledger_head values ('BBBB', 5, '')",
            "alter table siltbench.ledger_line disable trigger all",
            "create table siltbench.mine(i int)",
            "insert into siltbench.schema_edition values (9)")) {
      SQLException refused =
          assertThrows(SQLException.class, () -> pg.sql(database, "bench", text), text);
      assertEquals("42501", refused.getSQLState(), text);
    }
    SQLException never =
        assertThrows(
            SQLException.class,
            () -> pg.sql(database, "postgres", "delete from siltbench.ledger_line"));
    assertEquals("SB003", never.getSQLState());
  }

  @Test
  void theServerRefusesADamagedLineAndASecondHistory() throws Exception {
    String database = database();
    Path north = folder.resolve("north");
    Path copy = folder.resolve("copy");
    try (OpenLab lab = new Labs(1).create(north)) {
      lab.act(view -> List.of(weighing("F1", "0.1")));
      share(database, lab);
    }
    copy(north, copy);
    try (OpenLab lab = new Labs(1).open(north)) {
      lab.act(view -> List.of(weighing("F2", "0.2")));
      share(database, lab);
    }
    try (OpenLab lab = new Labs(1).open(copy)) {
      Problem behind = assertThrows(Problem.Refused.class, () -> share(database, lab));
      assertTrue(behind.what().contains("only 2 are here"), behind.what());
      lab.act(view -> List.of(weighing("F3", "0.3")));
      Problem same = assertThrows(Problem.Refused.class, () -> share(database, lab));
      assertTrue(same.what().contains("another history"), same.what());
      lab.act(view -> List.of(weighing("F4", "0.3")));
      Problem more = assertThrows(Problem.Refused.class, () -> share(database, lab));
      assertTrue(more.what().contains("another history"), more.what());
    }
    SQLException damaged =
        assertThrows(
            SQLException.class,
            () ->
                pg.sql(
                    database,
                    "bench",
                    "insert into siltbench.ledger_line(bench, seq, prev, sum, line) values"
                        + " ('BBBB', 1, repeat('0', 64), repeat('1', 64), 'x')"));
    assertEquals("23514", damaged.getSQLState());
  }

  static void copy(Path from, Path to) throws Exception {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
  }

  @Test
  void aNewerSchemaIsRefusedAndAMissingOneExplained() throws Exception {
    String database = database();
    pg.sql(database, "postgres", "insert into siltbench.schema_edition values (2)");
    pg.sql("postgres", "postgres", "create database bare");
    try (OpenLab lab = new Labs(1).create(folder.resolve("north"))) {
      Problem newer = assertThrows(Problem.Refused.class, () -> share(database, lab));
      assertTrue(newer.what().contains("edition 2"), newer.what());
      Problem bare = assertThrows(Problem.Refused.class, () -> share("bare", lab));
      assertTrue(bare.next().contains("--prepare"), bare.next());
      ServerAddress nobody = new ServerAddress("jdbc:postgresql://127.0.0.1:1/x", "bench", "");
      assertThrows(Problem.Outside.class, () -> Exchange.with(nobody, lab, done -> {}));
      lab.act(view -> List.of(weighing("F1", "0.1")));
    }
  }

  @Test
  void linesFromAHostileServerAreNotTakenIn() throws Exception {
    String database = database();
    try (OpenLab north = new Labs(1).create(folder.resolve("north"));
        OpenLab south = new Labs(2).create(folder.resolve("south"))) {
      north.act(view -> List.of(weighing("F1", "0.1")));
      share(database, north);
      pg.sql(
          database,
          "postgres",
          "alter table siltbench.ledger_line disable trigger all;"
              + "alter table siltbench.ledger_line drop constraint whole;"
              + "update siltbench.ledger_line set line = replace(line, '0.1', '9.9')");
      Exchange.Exchanged exchanged = share(database, south);
      assertEquals(0, exchanged.received());
      assertEquals(1, exchanged.refused().size());
      assertTrue(south.register().history(new Subject("filter", "F1")).isEmpty());
    }
  }

  @Test
  void theLineIsEncryptedAndTheServerProvesItself() throws Exception {
    Path certificate = pg.certificate();
    Assumptions.assumeTrue(certificate != null, "no openssl here");
    String database = database();
    String url =
        pg.url(database).replace("127.0.0.1", "localhost")
            + "?sslmode=verify-full&sslrootcert="
            + certificate;
    try (OpenLab lab = new Labs(1).create(folder.resolve("north"))) {
      assertEquals(1, Exchange.with(new ServerAddress(url, "bench", ""), lab, done -> {}).sent());
      Path wrong = Files.writeString(folder.resolve("wrong.crt"), "");
      ServerAddress other =
          new ServerAddress(url.replace(certificate.toString(), wrong.toString()), "bench", "");
      assertThrows(Problem.Outside.class, () -> Exchange.with(other, lab, done -> {}));
    }
  }

  @Test
  void addressesThatAreNoneAreRefused() {
    for (String url :
        List.of(
            "jdbc:h2:mem:x;INIT=RUNSCRIPT FROM 'x'",
            "http://example.org/x",
            "jdbc:postgresql://host/x?socketFactory=evil",
            "jdbc:postgresql://host/x?password=secret")) {
      Problem problem =
          assertThrows(Problem.WrongUse.class, () -> new ServerAddress(url, "bench", ""), url);
      assertFalse(problem.getMessage().contains("secret"));
    }
    assertEquals(
        "verify-full",
        new ServerAddress("jdbc:postgresql://lab.example.org/x", "b", "")
            .properties()
            .getProperty("sslmode"));
  }

  @Test
  void partitionedBenchesComeToTheSameState() throws Exception {
    schedules(0, 8);
  }

  @Test
  @Tag("long")
  void fiveHundredRandomPartitionsHeal() throws Exception {
    schedules(1000, 500);
  }

  private void schedules(int first, int count) throws Exception {
    String database = database();
    for (int seed = first; seed < first + count; seed++) {
      schedule(database, seed);
      pg.sql(
          database,
          "postgres",
          "alter table siltbench.ledger_line disable trigger never_changed;"
              + "truncate siltbench.ledger_line, siltbench.ledger_head;"
              + "alter table siltbench.ledger_line enable trigger never_changed");
    }
  }

  private void schedule(String database, int seed) throws Exception {
    Random random = new Random(seed);
    List<OpenLab> labs = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      labs.add(new Labs(10L * seed + i).create(folder.resolve("s" + seed + "-" + i)));
    }
    for (int step = 0; step < 30; step++) {
      OpenLab lab = labs.get(random.nextInt(3));
      switch (random.nextInt(6)) {
        case 0 -> share(database, lab);
        case 1 -> broken(database, lab, random.nextInt(4));
        case 2 -> correct(lab, random);
        default ->
            lab.act(view -> List.of(weighing("F" + random.nextInt(5), "0." + random.nextInt(99))));
      }
    }
    for (int round = 0; round < 2; round++) {
      for (OpenLab lab : labs) {
        share(database, lab);
      }
    }
    String export = Labs.export(labs.get(0));
    for (OpenLab lab : labs) {
      assertEquals(export, Labs.export(lab), "seed " + seed);
      lab.close();
    }
  }

  /** The cable is pulled after some batches. */
  private static void broken(String database, OpenLab lab, int after) {
    int[] batches = {0};
    try {
      Exchange.with(
          pg.bench(database),
          lab,
          done -> {
            if (batches[0]++ == after) {
              throw new CablePulled();
            }
          });
    } catch (CablePulled e) {
      assertTrue(batches[0] > after);
    }
  }

  private static final class CablePulled extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  private static void correct(OpenLab lab, Random random) {
    List<Entry> all = new ArrayList<>();
    lab.register().each(all::add);
    Entry target = all.get(random.nextInt(all.size()));
    lab.act(view -> List.of(correction(target.ref(), "filter", "F" + random.nextInt(5))));
  }
}
