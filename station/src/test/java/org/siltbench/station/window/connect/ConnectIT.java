package org.siltbench.station.window.connect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.Timebase;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.command.weigh.PtyFeed;
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.window.LedgerFacts;
import org.siltbench.station.window.RobotWindow;

/** First run and connecting, under a robot, on the practice balance and over a real pty. */
class ConnectIT {

  @TempDir Path folder;

  private static boolean go(RobotWindow window) {
    window.desk().go("connect");
    return true;
  }

  @Test
  void a_first_weighing_is_guided_in_five_steps_and_ends_on_the_disk() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"))) {
      RobotWindow.on(
          () -> {
            window.assembly().connect("practice?seed=3&speed=20");
            return go(window);
          });
      window.awaitText("state", "Ready");
      window.shot("connect-first-run");
      window.robot().push(KeyCode.F12);
      RobotWindow.await("wait", () -> on(window, "WAIT"));
      window.shot("connect-wait");
      RobotWindow.await(
          "done",
          () ->
              window.desk().weighing().running().get().isEmpty()
                  && LedgerFacts.of(window.lab(), "weighing").size() == 1);
      window.shot("connect-done");
      assertEquals(1, LedgerFacts.of(window.lab(), "weighing").size());
    }
  }

  private static boolean on(RobotWindow window, String step) {
    return window.node("step-" + step).getStyleClass().contains("picked");
  }

  @Test
  void a_real_lab_offers_the_practice_lab_beside_it() {
    Path lab = folder.resolve("lab");
    Setting setting =
        new Setting(
            "AB",
            Timebase.system().withZone(java.time.ZoneOffset.UTC),
            new Random(1),
            new LifeSubjects(),
            note -> {});
    LabFolder.create(lab, "bench", false, setting).close();
    try (RobotWindow window = RobotWindow.open(lab)) {
      RobotWindow.on(() -> go(window));
      RobotWindow.await("the offer", () -> window.text("practice.open").contains("practice lab"));
      assertTrue(window.robot().lookup(".row").queryAll().isEmpty(), "no guided steps here");
    }
  }

  @Test
  void a_balance_on_a_port_is_searched_found_and_used_without_a_byte_sent() throws Exception {
    PtyFeed balance = new PtyFeed(folder.resolve("port"), 50, "0.00000 g");
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"))) {
      RobotWindow.on(() -> go(window));
      window.robot().clickOn("#pane-real");
      window.shot("connect-real");
      RobotWindow.on(() -> type(window, "spec", "serial:" + folder.resolve("no-such-port")));
      window.robot().clickOn(window.node("find.one"));
      RobotWindow.await("the trouble", () -> !window.desk().notices().list().isEmpty());
      window.robot().push(KeyCode.ESCAPE);
      RobotWindow.on(() -> type(window, "spec", balance.spec()));
      window.robot().clickOn(window.node("find.one"));
      window.awaitText("find.state", "Found");
      RobotWindow.await(
          "the evidence",
          () -> ((TextArea) window.node("find.evidence")).getText().contains("readable"));
      RobotWindow.on(() -> type(window, "spec", "serial:/dev/ttyUSB0?baud=9600"));
      window.shot("connect-found");
      RobotWindow.on(() -> type(window, "spec", balance.spec()));
      RobotWindow.on(
          () -> {
            ((javafx.scene.control.Button) window.node("use.go")).fire();
            return true;
          });
      window.awaitText("state", "Ready");
      assertEquals("check", RobotWindow.on(() -> window.desk().front().get()));
    } finally {
      balance.close();
    }
  }

  @Test
  void speaks_german() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"), Locale.GERMAN)) {
      RobotWindow.on(() -> go(window));
      RobotWindow.await("the steps", () -> window.robot().lookup(".row").queryAll().size() == 5);
      window.shot("connect-german");
    }
  }

  private static boolean type(RobotWindow window, String field, String text) {
    ((TextField) window.node(field)).setText(text);
    return true;
  }
}
