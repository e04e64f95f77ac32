package org.siltbench.station.window.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Locale;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.practice.Load;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.look.Theme;

/** The strip over the practice balance, with its pictures in every look and size. */
@Timeout(120)
class StripIT {

  @TempDir Path folder;

  private static void connect(RobotWindow window) {
    RobotWindow.on(
        () -> {
          window.assembly().connect("practice?speed=20");
          return true;
        });
    window.awaitText("state", "Ready");
  }

  @Test
  void shows_the_live_mass_in_every_look_and_on_a_large_screen() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"))) {
      window.shot("strip-no-balance");
      connect(window);
      window.shot("strip-ready");
      RobotWindow.on(
          () -> {
            window.desk().balance().orElseThrow().hand().put(Load.of(Mass.ofGrams("0.12874")));
            return true;
          });
      window.awaitText("state", "Stable");
      window.shot("strip-stable");
      window.shot("strip-contrast", Theme.CONTRAST);
      window.robot().push(KeyCode.F1);
      window.shot("strip-sign-on");
      RobotWindow.on(() -> ((TextField) window.node("initials")).getText());
      window.own(
          "The disk is full: nothing more can be written.",
          "Every mass shown as recorded is on the disk.",
          "Make room, then weigh this filter again.",
          "A torn last line was set aside.");
      window.robot().push(KeyCode.F1);
      RobotWindow.on(
          () -> {
            window
                .desk()
                .notices()
                .show(
                    "disk",
                    new Problem.Outside(
                        "The disk is full: nothing more can be written.",
                        "Every mass shown as recorded is on the disk.",
                        "Make room, then weigh this filter again.",
                        null));
            window.desk().notices().show(Notice.note("note", "A torn last line was set aside."));
            return true;
          });
      window.shot("strip-trouble");
      window.robot().push(KeyCode.ESCAPE);
      assertEquals(1, RobotWindow.on(() -> window.desk().notices().list().size()));
      window.size(3840, 2160);
      RobotWindow.await("4K", () -> window.scene().getWidth() > 3000);
      window.shot("strip-4k", Theme.LIGHT);
    }
  }

  @Test
  void speaks_german() {
    try (RobotWindow window = RobotWindow.open(folder.resolve("lab"), Locale.GERMAN)) {
      RobotWindow.on(
          () -> {
            window.assembly().connect("practice?speed=20");
            return true;
          });
      window.awaitText("state", "Bereit");
      window.shot("strip-german");
      assertEquals(
          LinkSpec.parse("practice?speed=20").toString(),
          window.desk().balance().orElseThrow().spec().toString());
    }
  }
}
