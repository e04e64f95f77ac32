package org.siltbench.station.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.siltbench.station.bench.Labs.weighing;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Labs;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.Hostile;
import org.siltbench.station.register.Subject;

/** A server that answers whatever it likes: tables of the right names without any of the rules. */
class HostileServerIT {

  @TempDir Path folder;

  @Test
  void whateverAServerAnswersIsTakenWholeOrRefused() throws Exception {
    answers(80);
  }

  @Test
  @Tag("long")
  void thousandsOfAnswersAreTakenWholeOrRefused() throws Exception {
    answers(10_000);
  }

  private void answers(int count) throws Exception {
    try (PgServer pg = PgServer.start();
        OpenLab north = new Labs(1).create(folder.resolve("north"));
        OpenLab south = new Labs(2).create(folder.resolve("south"))) {
      north.act(view -> List.of(weighing("F1", "0.1"), weighing("F2", "0.2")));
      south.act(view -> List.of(weighing("F3", "0.3")));
      pg.sql("postgres", "postgres", "create role bench login");
      pg.sql("postgres", "postgres", "create database odd");
      pg.sql(
          "odd",
          "postgres",
          "create schema siltbench; create table siltbench.schema_edition(edition int);"
              + " insert into siltbench.schema_edition values (1);"
              + " create table siltbench.ledger_head(bench text, seq numeric, sum text);"
              + " create table siltbench.ledger_line(bench text, seq numeric, prev text, sum text,"
              + " line text); grant usage on schema siltbench to bench;"
              + " grant select, insert on all tables in schema siltbench to bench");
      List<String> good = north.lines(north.code(), 0, 10);
      Hostile hostile = new Hostile(11);
      int refused = 0;
      try (Connection admin = DriverManager.getConnection(pg.url("odd"), "postgres", "")) {
        for (int i = 0; i < count; i++) {
          answer(admin, hostile, north.code(), good);
          refused += isRefused(pg, south) ? 1 : 0;
        }
      }
      assertTrue(refused > count / 3, "refused: " + refused);
      assertEquals(1, south.register().history(new Subject("filter", "F3")).size());
    }
    assertEquals(List.of(), VerifyLab.of(folder.resolve("south"), List.of()).problems());
  }

  private static boolean isRefused(PgServer pg, OpenLab lab) {
    try {
      return !Exchange.with(pg.bench("odd"), lab, done -> {}).refused().isEmpty();
    } catch (Problem e) {
      return true;
    }
  }

  private static void answer(Connection admin, Hostile hostile, String bench, List<String> good)
      throws Exception {
    try (Statement statement = admin.createStatement()) {
      statement.execute("truncate siltbench.ledger_head, siltbench.ledger_line");
    }
    String named = hostile.below(3) == 0 ? without0(hostile.text(bench)) : bench;
    String[] seqs = {"3", "0", "-5", "9223372036854775807", "1e30", "2.5", null, "NaN"};
    String seq = seqs[Math.min(hostile.below(20), seqs.length - 1) % seqs.length];
    insert(
        admin,
        "insert into siltbench.ledger_head values(?, ?::numeric, ?)",
        hostile.below(20) == 0 ? null : named,
        hostile.below(2) == 0 ? "3" : seq,
        hostile.below(20) == 0 ? null : "0");
    for (int i = 0; i < good.size(); i++) {
      String line = hostile.below(3) == 0 ? without0(hostile.text(good.get(i))) : good.get(i);
      insert(
          admin,
          "insert into siltbench.ledger_line(bench, seq, line) values(?, ?::numeric, ?)",
          named,
          Integer.toString(i + 1),
          hostile.below(20) == 0 ? null : line);
    }
  }

  /** The database has no text with this character. */
  private static String without0(String text) {
    return text.replace("\u0000", "");
  }

  private static void insert(Connection admin, String text, String... values) throws Exception {
    try (PreparedStatement insert = admin.prepareStatement(text)) {
      for (int i = 0; i < values.length; i++) {
        insert.setString(i + 1, values[i]);
      }
      insert.execute();
    }
  }
}
