package org.siltbench.station.window.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.MarkedWords;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.TestDesk;

/** A scanner that types, and a person who types, into the same window. */
class WedgeIT {

  @TempDir Path folder;

  @Test
  void a_scan_reaches_the_desk_wherever_the_focus_is_and_typed_text_its_field() {
    Path lab = folder.resolve("lab");
    List<String> ids;
    try (TestDesk desk = new TestDesk(lab)) {
      ids = desk.batch("storm", "sm-2540d-23", "sample", "sample");
    }
    try (RobotWindow window = RobotWindow.open(lab)) {
      window.robot().push(KeyCode.F1);
      TextField field = (TextField) window.node("initials");
      window.robot().clickOn(field).write("RK ");
      RobotWindow.await("typed", () -> field.getText().equals("RK "));

      window.scan(ids.get(0));
      RobotWindow.await(
          "the notice",
          () ->
              window.desk().notices().list().stream()
                  .anyMatch(
                      n ->
                          MarkedWords.plain(n.what()).contains(ids.get(0))
                              && MarkedWords.plain(n.next()).contains("Pre-weigh")));
      assertEquals("RK ", RobotWindow.on(field::getText));
      window.shot("scan-known-bag");

      window.scan("K3DF0712R");
      RobotWindow.await(
          "refused",
          () ->
              window.desk().notices().list().stream()
                  .anyMatch(n -> MarkedWords.plain(n.what()).contains("K3DF0712R")));
      window.shot("scan-unknown-bag");

      window.robot().clickOn(field).write("AB");
      RobotWindow.await("typed on", () -> field.getText().equals("RK AB"));
      window.robot().push(KeyCode.BACK_SPACE);
      RobotWindow.await("in order", () -> field.getText().equals("RK A"));
    }
  }

  @Test
  void what_is_as_short_as_a_dish_stays_in_its_field_where_no_dish_is_asked_for() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"))) {
      window.robot().push(KeyCode.F1);
      TextField field = (TextField) window.node("initials");
      window.robot().clickOn(field);
      window.scan("14");
      RobotWindow.await("given back", () -> field.getText().equals("14"));
    }
  }

  @Test
  void a_key_with_alt_right_after_a_letter_comes_after_that_letter() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"))) {
      window.robot().push(KeyCode.F3);
      RobotWindow.await("the form", () -> window.node("every").isVisible());
      window.type("every", "");
      window.robot().write("20m", 0).push(KeyCode.ALT, KeyCode.C);
      window.awaitText("counted", "19 samples");
    }
  }
}
