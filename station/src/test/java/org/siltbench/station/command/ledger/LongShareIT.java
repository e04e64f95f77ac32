package org.siltbench.station.command.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.FastTime;
import org.siltbench.station.share.PgServer;

class LongShareIT {

  @TempDir Path folder;

  @Test
  void shareTellsATerminalHowManyLinesAreExchangedAndAScriptWithEvents() throws Exception {
    try (PgServer pg = PgServer.start()) {
      pg.make("lab");
      CommandLab hasty = LongLedgerTest.longLedger(folder.resolve("lab"));
      hasty.at(new FastTime(10_000_000).withZone(ZoneOffset.UTC)).terminal();
      String[] share = {"share", "--server", pg.url("lab"), "--server-user", "bench"};
      hasty.ok(share);
      assertTrue(hasty.err().contains("500 lines exchanged so far …"), hasty::err);
      assertEquals("sent 3000, received 0", hasty.out().strip());
      CommandLab other = new CommandLab(folder.resolve("other"));
      other.ok("lab", "new", "--name", "South");
      other.at(new FastTime(10_000_000).withZone(ZoneOffset.UTC));
      other.ok("share", "--server", pg.url("lab"), "--server-user", "bench", "--events");
      assertTrue(other.err().contains("\"event\":\"progress\""), other::err);
      assertTrue(other.err().contains("\"what\":\"lines exchanged\""), other::err);
      assertFalse(other.err().contains("so far"), other::err);
    }
  }
}
