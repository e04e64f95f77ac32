package org.siltbench.station.window.today;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.TestDesk;

/** Today under a robot, with its pictures. */
class TodayIT {

  @TempDir Path folder;

  @Test
  void lists_what_is_due_and_opens_it_by_keyboard() {
    Path lab = folder.resolve("lab");
    try (TestDesk desk = new TestDesk(lab)) {
      List<String> ids = desk.batch("storm", "sm-2540d-23", "sample", "sample", "control");
      desk.pre(ids.get(0), "0.11234");
    }
    try (RobotWindow window = RobotWindow.open(lab)) {
      RobotWindow.await("the list", () -> window.robot().lookup(".row").queryAll().size() == 2);
      window.shot("today-due");
      window.robot().push(KeyCode.F1);
      window.robot().push(KeyCode.F2);
      assertEquals("today", RobotWindow.on(() -> window.desk().front().get()));
    }
  }
}
