package org.siltbench.station.window.connect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.Timebase;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.weigh.PtyFeed;
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.window.LedgerFacts;
import org.siltbench.station.window.RobotWindow;

/** First run and connecting, under a robot, on the practice balance and over a real pty. */
class ConnectIT {

  /** As an invented balance types them on its key: blanks before the number, a unit. */
  private static final List<String> TYPED =
      List.of(
          "   0.00000 g",
          "   0.00000 g",
          "   0.00001 g",
          "   0.11234 g",
          "   0.11235 g",
          "   0.11234 g",
          "  20.00012 g",
          "  20.00011 g",
          "  20.00012 g");

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
  void a_balance_that_types_is_learned_as_by_the_command_and_its_quick_lines_are_no_scans()
      throws Exception {
    CommandLab command = new CommandLab(folder.resolve("by-command"));
    command.ok("lab", "new").input(String.join("\n", TYPED) + "\ndone\nyes\n");
    command.ok("balance", "learn", "--balance", "typed", "--save", "left");
    Path formats = folder.resolve("lab").resolve("formats");
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"))) {
      letType(window);
      TYPED.forEach(window::scan);
      assertEquals(
          String.join("\n", TYPED) + '\n',
          RobotWindow.on(() -> ((TextArea) window.node("typed")).getText()));
      assertTrue(RobotWindow.on(() -> window.desk().notices().list().isEmpty()), "no scan");
      window.shot("connect-typed");

      window.robot().push(KeyCode.ALT, KeyCode.E);
      window.awaitText("lesson.show", "can be told");
      String evidence = ((TextArea) window.node("lesson.evidence")).getText();
      assertTrue(evidence.contains("0.11234 g"), evidence);
      assertFalse(Files.exists(formats), "nothing is saved before it is shown and told");
      window.scan("K3DF0712R");
      window.awaitNotice("K3DF0712R"); // a scan again

      window.type("format.name", "left");
      window.press("lesson.save", KeyCode.SPACE);
      RobotWindow.await(
          "the balance text",
          () -> ((TextField) window.node("spec")).getText().equals("typed?format=left"));
      window.press("use.go", KeyCode.SPACE);
      window.awaitNotice("The window learns a balance that types");
    }
    assertEquals(saved(command.folder().resolve("formats")), saved(formats));
  }

  @Test
  void a_line_typed_elsewhere_is_told_and_never_half_a_line() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"))) {
      letType(window);
      RobotWindow.on(
          () -> {
            window.node("format.name").requestFocus();
            return true;
          });
      window.scan(TYPED.get(0));
      window.awaitNotice("was not taken");
      RobotWindow.await("the cursor is back", () -> window.node("typed").isFocused());
      assertEquals("", ((TextArea) window.node("typed")).getText());
      assertEquals("", ((TextField) window.node("format.name")).getText());
    }
  }

  private static void letType(RobotWindow window) {
    RobotWindow.on(() -> go(window));
    window.robot().clickOn("#pane-real");
    RobotWindow.on(() -> type(window, "spec", "typed"));
    window.robot().push(KeyCode.ALT, KeyCode.L);
    RobotWindow.await("the cursor", () -> window.node("typed").isFocused());
  }

  /** What a folder of formats has, name and text. */
  private static String saved(Path formats) throws IOException {
    StringBuilder all = new StringBuilder();
    try (Stream<Path> files = Files.list(formats)) {
      for (Path file : files.sorted().toList()) {
        all.append(file.getFileName()).append('\n').append(Files.readString(file));
      }
    }
    return all.toString();
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
