package org.siltbench.station.window.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.desk.Prefs;

/** The settings under a robot, room by room, with pictures. */
class SettingsIT {

  @TempDir Path folder;

  private static boolean type(RobotWindow window, String field, String text) {
    ((TextField) window.node(field)).setText(text);
    return true;
  }

  @Test
  void every_room_keeps_what_is_set_in_it() {
    Path lab = folder.resolve("lab");
    try (RobotWindow window = RobotWindow.open(lab)) {
      window.robot().push(KeyCode.CONTROL, KeyCode.COMMA);
      window.awaitText("balance.use", "Use it");
      window.shot("settings-balance");
      RobotWindow.on(() -> type(window, "balance", "carrier pigeon"));
      window.robot().clickOn(window.node("balance.use"));
      RobotWindow.await("the refusal", () -> !window.desk().notices().list().isEmpty());
      window.shot("settings-refused");
      window.robot().push(KeyCode.ESCAPE);

      window.robot().clickOn("#room-labels");
      window.robot().clickOn(window.node("ruler.draw"));
      window.awaitText("ruler.said", "True would be");
      window.shot("settings-labels");
      assertTrue(Files.exists(lab.resolve("papers").resolve("ruler-roll-50x25.pdf")));

      window.robot().clickOn("#room-methods");
      RobotWindow.on(
          () -> {
            ((javafx.scene.control.TableView<?>) window.node("methods"))
                .getSelectionModel()
                .select(2);
            return true;
          });
      RobotWindow.await(
          "the numbers", () -> !((TextArea) window.node("method.text")).getText().isEmpty());
      window.shot("settings-methods");

      window.robot().clickOn("#room-people");
      RobotWindow.on(() -> type(window, "person.initials", "AB"));
      RobotWindow.on(() -> type(window, "person.pin", "4711"));
      RobotWindow.on(() -> type(window, "person.again", "4711"));
      window.robot().clickOn("#right-supervise");
      window.robot().clickOn(window.node("person.add"));
      RobotWindow.await("the person", () -> window.desk().signOn().asksPin());
      RobotWindow.await("the notice", () -> !window.desk().notices().list().isEmpty());
      window.shot("settings-people");
      window.robot().push(KeyCode.ESCAPE);

      window.robot().clickOn("#room-looks");
      window.shot("settings-looks");
      window.robot().clickOn("#theme-contrast");
      window.robot().clickOn("#zoom-120");
      RobotWindow.await(
          "the look", () -> window.scene().getStylesheets().get(1).contains("contrast"));
      window.shot("settings-contrast", org.siltbench.station.window.look.Theme.CONTRAST);
    }
    assertEquals("contrast", Prefs.of(lab).get(Prefs.Name.THEME));
    assertEquals("120", Prefs.of(lab).get(Prefs.Name.ZOOM));
  }

  @Test
  void speaks_german() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"), Locale.GERMAN)) {
      window.robot().push(KeyCode.CONTROL, KeyCode.COMMA);
      window.awaitText("balance.use", "Verwenden");
      window.robot().clickOn("#room-labels");
      window.shot("settings-german");
    }
  }
}
