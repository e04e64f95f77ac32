package org.siltbench.station.window.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.MarkedWords;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.work.batch.Batches;

/** Plan, batch, lot, papers, trip and audit under a robot, with pictures of every part. */
class PrepareIT {

  @TempDir Path folder;

  private static void prepare(Path lab) {
    try (TestDesk desk = new TestDesk(lab)) {
      desk.write(
          "lot.created",
          "lot",
          "GF-12",
          "material",
          "glass fibre, no binder",
          "pore_um",
          "1.2",
          "diameter_mm",
          "47",
          "washed",
          true,
          "dried",
          true,
          "muffled",
          false,
          "described",
          true);
      desk.write(
          "lot.tested",
          "lot",
          "GF-12",
          "area_cm2",
          "17.3",
          "losses_mg",
          List.of("0.05"),
          "limit_mg_cm2",
          "0.017",
          "pass",
          true);
      String[] roles = new String[12];
      Arrays.fill(roles, "sample");
      roles[9] = "field-blank";
      roles[10] = "spare";
      roles[11] = "control";
      desk.batch("May round", "sm-2540d-23", roles).forEach(id -> desk.pre(id, "0.11234"));
    }
  }

  @Test
  void a_batch_is_planned_made_and_given_out_by_keys() {
    Path lab = folder.resolve("lab");
    prepare(lab);
    try (RobotWindow window = RobotWindow.open(lab)) {
      window.robot().push(KeyCode.F3);
      RobotWindow.await(
          "the batch", () -> window.robot().lookup(".row-title").queryAll().size() > 1);
      set(window, "sites", "2");
      set(window, "lowest", "20");
      set(window, "highest", "800");
      window.robot().push(KeyCode.ALT, KeyCode.C);
      window.awaitText("counted", "filters:");
      window.shot("prepare-plan");
      set(window, "name", "Alder Fork storm");
      window.robot().push(KeyCode.ALT, KeyCode.M);
      RobotWindow.await(
          "the new batch",
          () ->
              window.desk().notices().list().stream()
                  .anyMatch(n -> MarkedWords.plain(n.what()).contains("Alder Fork storm")));
      assertEquals(2, Batches.all(window.lab().register()).size());
      window.shot("prepare-made");
      window.robot().push(KeyCode.ESCAPE);
      window.robot().push(KeyCode.ALT, KeyCode.M);
      RobotWindow.await("a name is missing", () -> !window.desk().notices().list().isEmpty());
      window.shot("prepare-refused");
      window.robot().push(KeyCode.ESCAPE);
      window.robot().push(KeyCode.ALT, KeyCode.O);
      RobotWindow.await("lots", () -> there(window, "lots"));
      window.shot("prepare-lots");
      window.robot().push(KeyCode.ALT, KeyCode.L);
      RobotWindow.await("papers", () -> there(window, "stock"));
      window.shot("prepare-papers");
      window.robot().push(KeyCode.ALT, KeyCode.T);
      RobotWindow.await("trip", () -> there(window, "issue"));
      String old = Batches.require(window.lab().register(), "May round").code();
      window.robot().clickOn("#choose-" + old);
      set(window, "trip", "Alder Fork, May");
      window.robot().push(KeyCode.ALT, KeyCode.I);
      RobotWindow.await(
          "out",
          () ->
              window.desk().notices().list().stream()
                  .anyMatch(n -> MarkedWords.plain(n.what()).contains("out on")));
      window.shot("prepare-trip");
      window.robot().push(KeyCode.ESCAPE);
      window.robot().push(KeyCode.ALT, KeyCode.A);
      RobotWindow.await("audit", () -> there(window, "audited"));
      window.shot("prepare-audit");
    }
  }

  private static boolean there(RobotWindow window, String id) {
    return window.scene().getRoot().lookup('#' + id) != null;
  }

  private static void set(RobotWindow window, String id, String text) {
    RobotWindow.on(
        () -> {
          ((TextField) window.node(id)).setText(text);
          return true;
        });
  }
}
