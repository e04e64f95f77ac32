package org.siltbench.station.command.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.FastTime;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.life.LifeSubjects;

/** A ledger of some thousand entries, read by commands for which every moment is a second. */
class LongLedgerTest {

  @TempDir Path folder;
  private CommandLab hasty;
  private CommandLab calm;

  @BeforeEach
  void aLongLedger() {
    Path place = folder.resolve("lab");
    calm = longLedger(place);
    hasty = new CommandLab(place).at(new FastTime(10_000_000).withZone(ZoneOffset.UTC));
  }

  /** A lab of three thousand entries. */
  static CommandLab longLedger(Path place) {
    CommandLab calm = new CommandLab(place);
    calm.ok("lab", "new", "--name", "North");
    calm.ok("room", "--temperature", "20.5", "--humidity", "45", "--pressure", "1013");
    Setting setting =
        new Setting("AB", Clock.systemUTC(), new Random(1), new LifeSubjects(), note -> {});
    try (OpenLab lab = LabFolder.open(place, setting)) {
      Entry room = lab.register().asWritten(new EntryRef(lab.code(), 2)).orElseThrow();
      Draft again = new Draft(room.kind(), room.kv(), room.must(), room.data());
      List<Draft> many = new ArrayList<>();
      for (int i = 0; i < 2998; i++) {
        many.add(again);
      }
      lab.act(view -> many);
    }
    return calm;
  }

  private void tells(String what, long done) {
    boolean told =
        hasty
            .err()
            .lines()
            .anyMatch(
                line ->
                    line.contains("\"event\":\"progress\"")
                        && line.contains("\"what\":\"" + what + "\"")
                        && line.contains("\"done\":" + done));
    assertTrue(told, () -> what + " in " + hasty.err());
  }

  @Test
  void verifyTellsHowManyLinesItHasRead() throws Exception {
    hasty.ok("verify", "--json", "--events");
    tells("lines read", 1000);
    tells("lines read", 3000);
    assertEquals(3000L, hasty.document().get("entries"));
    assertFalse(calm.terminal().ok("verify").err().contains("so far"), "within a second");
  }

  @Test
  void aTerminalIsToldAfterASecondAndAPipeIsNot() throws Exception {
    assertFalse(hasty.ok("verify").err().contains("so far"), hasty::err);
    String plain = hasty.out();
    hasty.terminal().ok("verify");
    assertTrue(hasty.err().contains("1,000 lines read so far …"), hasty::err);
    assertEquals(plain, hasty.out(), "nothing more on standard output");
  }

  @Test
  void rebuildTellsHowManyEntriesItHasRead() throws Exception {
    hasty.ok("rebuild", "--json", "--events");
    tells("entries read", 3000);
    assertEquals(3000L, hasty.document().get("entries"));
  }

  @Test
  void backupTellsWhatItCopiesAndReadsBack() throws Exception {
    Path stick = Files.createDirectory(folder.resolve("stick"));
    hasty.ok("backup", "--to", stick.toString(), "--json", "--events");
    tells("MiB of " + name() + " copied", 0);
    tells("lines read back", 3000);
  }

  private String name() throws Exception {
    try (var files = Files.list(folder.resolve("lab").resolve("ledger"))) {
      return files.findFirst().orElseThrow().getFileName().toString();
    }
  }
}
