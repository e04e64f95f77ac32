package org.siltbench.station.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.desk.Texts;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/** The first start asks, by keyboard alone, and makes nothing. */
@Timeout(60)
class WelcomeIT {

  @TempDir Path folder;

  private Welcome.Wish answered(Locale language, KeyCode... keys) throws Exception {
    FxToolkit.registerPrimaryStage();
    Path lab = folder.resolve("lab");
    Stage[] stage = new Stage[1];
    Welcome asked =
        RobotWindow.on(
            () -> {
              stage[0] = new Stage();
              return new Welcome(stage[0], Texts.of(Welcome.class, language), lab, 1366, 768);
            });
    RobotWindow.await("the keyboard", stage[0]::isFocused);
    new FxRobot().push(keys[0]);
    for (int i = 1; i < keys.length; i++) {
      new FxRobot().push(keys[i]);
    }
    Welcome.Wish wish = asked.wish().get(20, TimeUnit.SECONDS);
    assertFalse(Files.exists(lab), "nothing is made by asking");
    return wish;
  }

  @Test
  void practice_is_offered_first() throws Exception {
    assertEquals(Welcome.Wish.PRACTICE, answered(Locale.ENGLISH, KeyCode.SPACE));
  }

  @Test
  void a_lab_is_made_only_where_it_is_chosen() throws Exception {
    assertEquals(Welcome.Wish.LAB, answered(Locale.GERMAN, KeyCode.TAB, KeyCode.SPACE));
  }

  @Test
  void a_closed_welcome_wants_nothing() throws Exception {
    assertEquals(
        Welcome.Wish.NOTHING, answered(Locale.ENGLISH, KeyCode.TAB, KeyCode.TAB, KeyCode.SPACE));
  }
}
