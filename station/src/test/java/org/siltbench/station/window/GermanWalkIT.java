package org.siltbench.station.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A walk through every screen and pane of a German window; English on the way fails it. */
class GermanWalkIT {

  private static final List<KeyCode> SCREENS =
      List.of(
          KeyCode.F2,
          KeyCode.F3,
          KeyCode.F4,
          KeyCode.F5,
          KeyCode.F6,
          KeyCode.F7,
          KeyCode.F8,
          KeyCode.F9,
          KeyCode.F10,
          KeyCode.F11);

  @TempDir Path folder;

  @Test
  void an_empty_lab_speaks_german() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"), Locale.GERMAN)) {
      walk(window);
    }
  }

  @Test
  void a_lab_with_a_batch_weighed_back_speaks_german() {
    Path lab = folder.resolve("lab");
    try (TestDesk desk = new TestDesk(lab)) {
      new StormLab(desk);
    }
    try (RobotWindow window = RobotWindow.open(lab, Locale.GERMAN)) {
      window.robot().push(KeyCode.F9);
      RobotWindow.await("the results", () -> rows(window, "table") == 12);
      window.robot().push(KeyCode.F11);
      RobotWindow.await("the questions", () -> rows(window, "filters") == 12);
      walk(window);
    }
  }

  @Test
  void what_is_wrong_in_an_own_method_is_told_in_german() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"), Locale.GERMAN)) {
      window.robot().push(KeyCode.CONTROL, KeyCode.COMMA);
      window.robot().clickOn("#room-methods");
      RobotWindow.on(
          () -> {
            ((TextField) window.node("method.key")).setText("own");
            String preset = window.desk().methods().get(StormLab.METHOD).text();
            ((TextArea) window.node("method.text"))
                .setText(preset.replaceFirst("(?m)^report_digits *=.*$", "report_digits = ten"));
            ((Button) window.node("method.save")).fire();
            return true;
          });
      window.awaitNotice("report_digits: dort steht „ten“, erwartet: eine ganze Zahl");
    }
  }

  private static int rows(RobotWindow window, String table) {
    return ((TableView<?>) window.node(table)).getItems().size();
  }

  private static void walk(RobotWindow window) {
    for (KeyCode key : SCREENS) {
      window.robot().push(key);
      panes(window);
    }
    window.robot().push(KeyCode.CONTROL, KeyCode.COMMA);
    panes(window);
    RobotWindow.on(
        () -> {
          window.desk().go("connect");
          return true;
        });
    panes(window);
  }

  /** Shows each pane of the screen in turn, and each row of its tables. */
  private static void panes(RobotWindow window) {
    rows(window);
    for (String id : panesOf(window)) {
      RobotWindow.on(
          () -> {
            window.scene().getRoot().lookupAll(".toggle-button").stream()
                .filter(node -> id.equals(node.getId())) // another pane may have taken its place
                .forEach(node -> ((ToggleButton) node).fire());
            return true;
          });
      rows(window);
    }
  }

  private static List<String> panesOf(RobotWindow window) {
    return RobotWindow.on(
        () ->
            window.scene().getRoot().lookupAll(".toggle-button").stream()
                .map(Node::getId)
                .filter(id -> id != null && id.matches("(pane|room|part|purpose|phase)-.*"))
                .toList());
  }

  private static void rows(RobotWindow window) {
    window.sweep();
    List<TableView<?>> tables =
        RobotWindow.on(
            () ->
                window.scene().getRoot().lookupAll(".table-view").stream()
                    .<TableView<?>>map(node -> (TableView<?>) node)
                    .toList());
    for (TableView<?> table : tables) {
      for (int row = 0; row < table.getItems().size(); row++) {
        int at = row;
        RobotWindow.on(
            () -> {
              table.getSelectionModel().select(at);
              table.scrollTo(at);
              window.scene().getRoot().applyCss();
              window.scene().getRoot().layout();
              return true;
            });
        window.sweep();
      }
    }
  }
}
