package org.siltbench.station.window.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Locale;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.command.weigh.PtyFeed;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BalanceState;
import org.siltbench.station.window.BenchTime;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.StormLab;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.work.equip.BalanceRecord;

/** The check screen under a robot, on the practice balance, with its pictures. */
class CheckIT {

  /** The balance's clock runs so many times faster than ours. */
  private static final int FASTER = 5;

  private static final String QUICK = "practice?seed=3&speed=20";

  @TempDir Path folder;

  @Test
  void a_check_weight_is_weighed_by_the_one_key_and_stands_on_the_disk() {
    Path lab = folder.resolve("lab");
    try (TestDesk desk = new TestDesk(lab)) {
      new StormLab(desk);
    }
    try (RobotWindow window = RobotWindow.open(lab)) {
      window.robot().push(KeyCode.F4);
      RobotWindow.await("the screen", () -> !window.robot().lookup("#go").queryAll().isEmpty());
      window.shot("check-no-balance");
      window.robot().push(KeyCode.F12);
      RobotWindow.await("the refusal", () -> !window.desk().notices().list().isEmpty());
      window.shot("check-refused");
      window.robot().push(KeyCode.ESCAPE);
      RobotWindow.on(() -> connect(window));
      RobotWindow.on(() -> type(window, "weight.text", "100mg"));
      window.awaitText("state", "Ready");
      int before = checks(window);
      window.robot().push(KeyCode.F12);
      window.awaitText("step", "Wait");
      window.shot("check-wait");
      RobotWindow.await("the record", () -> checks(window) == before + 1);
      RobotWindow.await(
          "the verdict", () -> !window.robot().lookup(".check-verdict").queryAll().isEmpty());
      RobotWindow.await("the end", () -> window.desk().weighing().running().get().isEmpty());
      window.shot("check-passed");
    }
  }

  @Test
  void a_weight_that_is_off_fails_on_a_real_port_and_what_follows_is_told() throws Exception {
    PtyFeed balance = new PtyFeed(folder.resolve("port"), 200 / FASTER, "0.00000 g");
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"), new BenchTime(FASTER))) {
      RobotWindow.on(
          () -> {
            window.desk().record(() -> named(balance).record(window.desk().lab()), done -> {});
            window.assembly().connect(balance.spec());
            window.desk().go("check");
            return true;
          });
      window.awaitText("state", "Ready");
      RobotWindow.on(() -> type(window, "weight.text", "100mg"));
      window.robot().push(KeyCode.F12);
      window.awaitText("step", "Place");
      balance.show("0.10081 g");
      RobotWindow.await(
          "the verdict", () -> !window.robot().lookup(".check-verdict").queryAll().isEmpty());
      RobotWindow.await("the end", () -> window.desk().weighing().running().get().isEmpty());
      RobotWindow.await(
          "the list", () -> ((TableView<?>) window.node("checks")).getItems().size() == 1);
      window.shot("check-failed");
      var checks =
          BalanceState.fold(
                  "left bench", window.lab().register().history(About.balance("left bench")))
              .orElseThrow()
              .checks();
      assertEquals(1, checks.size());
      assertEquals("0.81", checks.get(0).fields().text("error_mg"));
    } finally {
      balance.close();
    }
  }

  @Test
  void balance_weights_and_room_are_recorded() {
    Path lab = folder.resolve("lab");
    try (RobotWindow window = RobotWindow.open(lab)) {
      RobotWindow.on(() -> connect(window));
      window.robot().push(KeyCode.F4);
      window.awaitText("checks", "");
      window.robot().clickOn("#pane-balance");
      RobotWindow.on(() -> type(window, "serial", "SN 2217"));
      RobotWindow.on(() -> type(window, "resolution", "0.00001"));
      RobotWindow.on(() -> type(window, "due", "2025-06-30"));
      window.robot().clickOn(window.node("save.balance"));
      window.awaitText("balance.state", "run out");
      window.shot("check-balance");
      window.robot().push(KeyCode.ESCAPE).clickOn("#pane-weights");
      RobotWindow.on(() -> type(window, "weight.name", "E2-100"));
      RobotWindow.on(() -> type(window, "nominal", "0.1"));
      RobotWindow.on(() -> type(window, "certified", "0.100003"));
      RobotWindow.on(() -> type(window, "expanded", "0.006"));
      RobotWindow.on(() -> type(window, "weight.due", "2025-06-30"));
      window.robot().clickOn(window.node("save.weight"));
      RobotWindow.await("the notice", () -> !window.desk().notices().list().isEmpty());
      window.shot("check-weights");
      window.robot().push(KeyCode.ESCAPE).clickOn("#pane-room");
      RobotWindow.on(() -> type(window, "temperature", "21.4"));
      RobotWindow.on(() -> type(window, "humidity", "46"));
      window.robot().clickOn(window.node("save.room"));
      RobotWindow.await("the notice", () -> !window.desk().notices().list().isEmpty());
      window.shot("check-room");
      assertEquals(1, window.lab().register().history(About.weight("E2-100")).size());
      assertEquals(1, window.lab().register().history(About.room(window.lab().code())).size());
    }
  }

  @Test
  void speaks_german_and_tells_a_broken_run_rule() {
    Path lab = folder.resolve("lab");
    try (TestDesk desk = new TestDesk(lab)) {
      StormLab storm = new StormLab(desk);
      desk.clock().advance(java.time.Duration.ofHours(1));
      storm.check("0.81", false);
    }
    try (RobotWindow window = RobotWindow.open(lab, Locale.GERMAN)) {
      RobotWindow.on(() -> connect(window));
      window.robot().push(KeyCode.F4);
      RobotWindow.await(
          "the chart", () -> window.robot().lookup(".check-chart").queryAll().size() == 1);
      window.shot("check-german");
      assertTrue(checks(window) > 10);
    }
  }

  private static BalanceRecord named(PtyFeed balance) {
    return new BalanceRecord(
        "left bench", balance.spec(), null, null, null, null, null, null, null, null, null);
  }

  private static boolean connect(RobotWindow window) {
    window.assembly().connect(QUICK);
    return true;
  }

  private static int checks(RobotWindow window) {
    return BalanceState.fold("practice", window.lab().register().history(About.balance("practice")))
        .map(state -> state.checks().size())
        .orElse(0);
  }

  private static boolean type(RobotWindow window, String field, String text) {
    ((TextField) window.node(field)).setText(text);
    return true;
  }
}
