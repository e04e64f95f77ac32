package org.siltbench.station.window.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Locale;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.LedgerFacts;
import org.siltbench.station.window.MarkedWords;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.StormLab;
import org.siltbench.station.window.TestDesk;

/** Quality and release under a robot, with pictures. */
class QualityIT {

  @TempDir Path folder;

  @Test
  void a_batch_is_held_released_and_said_to_be() {
    Path lab = folder.resolve("lab");
    try (TestDesk desk = new TestDesk(lab)) {
      new StormLab(desk);
    }
    try (RobotWindow window = RobotWindow.open(lab)) {
      window.robot().push(KeyCode.F11);
      RobotWindow.await("the results", () -> table(window, "filters").getItems().size() == 12);
      window.shot("quality-questions");
      window.robot().clickOn(window.node("release"));
      RobotWindow.await("the refusal", () -> !window.desk().notices().list().isEmpty());
      window.shot("quality-refused");
      window.robot().push(KeyCode.ESCAPE);
      RobotWindow.on(
          () -> {
            table(window, "filters").getSelectionModel().select(1);
            return type(window, "reason", "The bag was wet.");
          });
      window.robot().clickOn(window.node("hold"));
      RobotWindow.await("the hold", () -> table(window, "questions").getItems().size() == 2);
      window.shot("quality-held");
      RobotWindow.on(
          () -> {
            table(window, "filters").getSelectionModel().select(1);
            return type(window, "reason", "It was rain, on the outside only.");
          });
      window.robot().clickOn(window.node("lift"));
      RobotWindow.await("no hold", () -> table(window, "questions").getItems().size() == 1);
      RobotWindow.on(() -> type(window, "accept", "Dried a third time without change."));
      window.robot().clickOn(window.node("release"));
      RobotWindow.await("the entry", () -> LedgerFacts.of(window.lab(), "release").size() == 1);
      RobotWindow.await(
          "the report",
          () ->
              window.robot().lookup(".chip .label").queryAll().stream()
                  .anyMatch(
                      n ->
                          n instanceof Labeled l
                              && MarkedWords.plain(l.getText()).startsWith("Report ")));
      window.shot("quality-released");
      assertEquals(2, LedgerFacts.of(window.lab(), "hold").size());
    }
  }

  @Test
  void an_empty_lab_says_what_to_do_in_german() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"), Locale.GERMAN)) {
      window.robot().push(KeyCode.F11);
      window.awaitText("nothing", "F3");
      window.shot("quality-empty-german");
    }
  }

  @SuppressWarnings("unchecked") // this screen's tables are only counted and selected in
  private static TableView<Object> table(RobotWindow window, String id) {
    return (TableView<Object>) window.node(id);
  }

  private static boolean type(RobotWindow window, String field, String text) {
    ((TextField) window.node(field)).setText(text);
    return true;
  }
}
