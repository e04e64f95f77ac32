package org.siltbench.station.window.preweigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javafx.scene.control.Spinner;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.weigh.PtyFeed;
import org.siltbench.station.life.Filters;
import org.siltbench.station.window.BenchTime;
import org.siltbench.station.window.LedgerFacts;
import org.siltbench.station.window.MarkedWords;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.work.batch.Batches;

/** A pre-weighing in the window, over a pseudo-terminal, without touching the mouse. */
@Timeout(120)
class PreWeighIT {

  private static final int FASTER = 10;
  private static final String EMPTY = "0.00000 g";
  private static final List<String> LOADS = List.of("0.12870 g", "0.12910 g");

  @TempDir Path folder;
  private final BenchTime time = new BenchTime(FASTER);
  private PtyFeed balance;

  @BeforeEach
  void setUp() throws Exception {
    balance = new PtyFeed(folder.resolve("port"), 100 / FASTER, EMPTY);
  }

  @AfterEach
  void tearDown() throws Exception {
    balance.close();
  }

  private CommandLab lab(String name) {
    CommandLab lab = new CommandLab(folder.resolve(name), time).at(time.clock()).of(new Random(1));
    lab.ok("lab", "new", "--name", name);
    lab.ok("balance", "describe", "--name", "Bench balance 1", "--balance", balance.spec());
    lab.ok("batch", "new", "--name", "B", "--lot", "L", "--method", "epa-160.2", "--count", "2");
    return lab;
  }

  private void weigh(RobotWindow window, String load) {
    window.awaitText("step", "Place on the pan");
    balance.show(load);
    window.awaitText("last", load.replace(" g", "")); // after the last one the run is over at once
    balance.show(EMPTY);
  }

  @Test
  void two_masses_are_recorded_hands_free() throws Exception {
    Path byWindow = lab("window").folder();
    try (RobotWindow window = RobotWindow.open(byWindow, time)) {
      window.hear(balance.spec(), "preweigh");
      window.awaitText("state", "Ready");
      window.shot("preweigh-set-up");
      RobotWindow.on(
          () -> {
            spinner(window).getValueFactory().setValue(0);
            return true;
          });
      window.robot().push(KeyCode.F12);
      window.awaitText("step", "Place on the pan");
      window.shot("preweigh-place");
      balance.show(LOADS.get(0));
      window.awaitText("step", "Wait");
      window.shot("preweigh-wait");
      window.awaitText("step", "Take it off");
      window.awaitText("last", "0.12870");
      window.shot("preweigh-recorded");
      balance.show(EMPTY);
      weigh(window, LOADS.get(1));
      window.awaitText("end", "2 masses recorded");
      window.shot("preweigh-over");
      assertEquals(2, LedgerFacts.of(window.lab(), "weighing").size());
    }
    assertTrue(VerifyLab.of(byWindow, List.of()).ok());
  }

  @SuppressWarnings("unchecked") // the view's spinner counts in whole numbers
  private static Spinner<Integer> spinner(RobotWindow window) {
    return (Spinner<Integer>) window.node("repeat");
  }

  @Test
  void each_bag_is_scanned_closed_and_a_wrong_one_refused() throws Exception {
    Path lab = lab("bags").folder();
    try (RobotWindow window = RobotWindow.open(lab, time)) {
      List<String> ids =
          Filters.ofBatch(
                  window.lab().register(), Batches.require(window.lab().register(), "B").code())
              .stream()
              .map(f -> f.id())
              .toList();
      window.hear(balance.spec(), "preweigh");
      RobotWindow.await("a batch", () -> !window.node("start").isDisabled());
      window.robot().clickOn(window.node("close.bags"));
      window.robot().push(KeyCode.F12);
      window.awaitText("step", "Place on the pan");
      balance.show(LOADS.get(0));
      window.awaitText("step", "Bag, close, scan");
      window.shot("preweigh-bag");
      window.scan(ids.get(1));
      RobotWindow.await(
          "the wrong bag is told",
          () ->
              window.desk().notices().list().stream()
                  .anyMatch(n -> MarkedWords.plain(n.what()).contains("not of " + ids.get(0))));
      window.shot("preweigh-wrong-bag");
      window.scan(ids.get(0));
      balance.show(EMPTY);
      window.awaitText("step", "Place on the pan");
      balance.pullOut();
      window.awaitText("state", "Cable away");
      window.shot("preweigh-cable-away");
      balance.plugIn();
      window.awaitText("state", "Ready");
      balance.show(LOADS.get(1));
      window.awaitText("last", "0.12910");
      window.awaitText("step", "Bag, close, scan");
      balance.show(EMPTY);
      window.robot().clickOn(window.node("stop"));
      RobotWindow.await("stopped", () -> window.desk().weighing().running().get().isEmpty());
      assertEquals(
          List.of("weighing", "bag.closed"),
          LedgerFacts.of(window.lab(), "weighing", "bag.closed").stream()
              .map(fact -> fact.substring(0, fact.indexOf(' ')))
              .limit(2)
              .toList());
    }
  }
}
