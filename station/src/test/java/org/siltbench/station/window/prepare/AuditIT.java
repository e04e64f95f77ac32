package org.siltbench.station.window.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.command.weigh.PtyFeed;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.window.BenchTime;
import org.siltbench.station.window.MarkedWords;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.TestDesk;

/** A bag audit in the window over a pseudo-terminal: one bag agrees, one holds another filter. */
@Timeout(120)
class AuditIT {

  private static final int FASTER = 10;
  private static final String EMPTY = "0.00000 g";

  @TempDir Path folder;

  @Test
  void a_bag_that_holds_another_filter_is_told_at_once() throws Exception {
    Path lab = folder.resolve("lab");
    List<String> ids;
    try (TestDesk desk = new TestDesk(lab)) {
      ids = desk.batch("Alder Fork storm", "epa-160.2", "sample", "sample");
      desk.write(
          "balance.described",
          "balance",
          "Bench balance 1",
          "where",
          "serial:" + folder.resolve("port"));
      desk.pre(ids.get(0), "0.12870");
      desk.pre(ids.get(1), "0.12910");
    }
    try (PtyFeed balance = new PtyFeed(folder.resolve("port"), 100 / FASTER, EMPTY);
        RobotWindow window = RobotWindow.open(lab, new BenchTime(FASTER))) {
      window.hear(balance.spec(), "prepare");
      window.awaitText("state", "Ready");
      window.robot().push(KeyCode.ALT, KeyCode.A);
      window.awaitText("audit-which", "To be weighed");
      String proposed =
          window.text("audit-which").replace("-", "").contains(ids.get(0))
              ? ids.get(0)
              : ids.get(1);
      String other = proposed.equals(ids.get(0)) ? ids.get(1) : ids.get(0);
      window.scan(other);
      window.awaitText("audit-which", ", ");
      window.robot().push(KeyCode.ALT, KeyCode.R);
      weigh(window, balance, proposed.equals(ids.get(0)) ? "0.12871 g" : "0.12911 g");
      window.awaitText("audit-now", "Place");
      balance.show("0.13500 g");
      RobotWindow.await(
          "the difference",
          () ->
              window.desk().notices().list().stream()
                  .anyMatch(n -> MarkedWords.plain(n.what()).contains("differs by")));
      window.shot("prepare-audit-differs");
      balance.show(EMPTY);
      RobotWindow.await(
          "the end",
          () ->
              window.desk().notices().list().stream()
                  .anyMatch(n -> MarkedWords.plain(n.what()).contains("audit is over")));
      assertEquals(1, audits(window, proposed).size());
      assertEquals(1, audits(window, other).size());
      assertFalse(
          Filters.require(window.lab().register(), other).pre().stream()
              .anyMatch(w -> w.digits().equals("0.13500")));
    }
  }

  private static List<Weighed> audits(RobotWindow window, String id) {
    return Filters.require(window.lab().register(), id).weighings().stream()
        .filter(weighed -> !weighed.forResult())
        .toList();
  }

  private static void weigh(RobotWindow window, PtyFeed balance, String load) {
    window.awaitText("audit-now", "Place");
    balance.show(load);
    window.awaitText("audit-now", "Take it off");
    balance.show(EMPTY);
  }
}
