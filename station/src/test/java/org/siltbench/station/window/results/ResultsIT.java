package org.siltbench.station.window.results;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.StormLab;
import org.siltbench.station.window.TestDesk;

/** The results screen under a robot, with its pictures. */
class ResultsIT {

  @TempDir Path folder;

  @Test
  void an_empty_lab_says_what_to_do() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"))) {
      window.robot().push(KeyCode.F9);
      window.awaitText("nothing", "F3");
      window.shot("results-empty");
    }
  }

  @Test
  void a_batch_is_read_its_load_calculated_and_its_files_written() throws IOException {
    Path lab = folder.resolve("lab");
    try (TestDesk desk = new TestDesk(lab)) {
      new StormLab(desk);
    }
    Path flow = StormFlow.write(folder);
    try (RobotWindow window = RobotWindow.open(lab)) {
      window.robot().push(KeyCode.F9);
      RobotWindow.await("the table", () -> table(window).getItems().size() == 12);
      window.shot("results-filled");
      RobotWindow.on(() -> choose(window, 4));
      window.shot("results-flags");

      window.robot().clickOn(window.node("pane-load"));
      window.robot().clickOn(window.node("load.go"));
      RobotWindow.await("the refusal", () -> !window.desk().notices().list().isEmpty());
      window.shot("results-load-refused");
      RobotWindow.on(() -> type(window, "discharge", flow.toString()));
      window.robot().clickOn("#discharge").push(KeyCode.ENTER);
      RobotWindow.await(
          "the load", () -> window.robot().lookup(".load-figure").queryAll().size() == 2);
      RobotWindow.on(() -> type(window, "discharge", "discharge.csv"));
      window.shot("results-load");

      window.robot().clickOn(window.node("pane-files"));
      RobotWindow.on(() -> type(window, "folder", folder.resolve("out").toString()));
      window.robot().clickOn(window.node("files.write"));
      RobotWindow.await(
          "the files", () -> Files.exists(folder.resolve("out").resolve("checks.pdf")));
      RobotWindow.await("the notice", () -> !window.desk().notices().list().isEmpty());
      RobotWindow.on(() -> type(window, "folder", "storm-of-12-May"));
      window.robot().push(KeyCode.ESCAPE);
      window.shot("results-files");
    }
    assertTrue(Files.exists(folder.resolve("out").resolve("report.pdf")));
  }

  @Test
  void speaks_german() {
    Path lab = folder.resolve("lab");
    try (TestDesk desk = new TestDesk(lab)) {
      new StormLab(desk);
    }
    try (RobotWindow window = RobotWindow.open(lab, Locale.GERMAN)) {
      window.robot().push(KeyCode.F9);
      RobotWindow.await("the table", () -> table(window).getItems().size() == 12);
      window.shot("results-german");
    }
  }

  @SuppressWarnings("unchecked") // the table of this screen holds lines
  private static TableView<Object> table(RobotWindow window) {
    return (TableView<Object>) window.node("table");
  }

  private static boolean choose(RobotWindow window, int line) {
    table(window).getSelectionModel().select(line);
    return true;
  }

  private static boolean type(RobotWindow window, String field, String text) {
    ((TextField) window.node(field)).setText(text);
    return true;
  }
}
