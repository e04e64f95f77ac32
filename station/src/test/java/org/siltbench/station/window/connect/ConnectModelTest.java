package org.siltbench.station.window.connect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.work.connect.FormatLesson;

/** Finding and learning as the window does them, on captured lines, without a screen. */
class ConnectModelTest {

  private static final Duration SHORT = Duration.ofMillis(100);

  @TempDir Path folder;

  private Balances balances() {
    return new Balances(Timebase.system(), folder.resolve("lab").resolve("formats"));
  }

  /** Lines of an invented balance: a mark for stable, a fixed-width number, a unit. */
  private Path captured() throws IOException {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < 20; i++) {
      lines.append("ST,+   0.00000 g\r\n");
    }
    for (int i = 0; i < 20; i++) {
      lines.append("US,+   0.1").append(1000 + i * 7).append(" g\r\n");
    }
    for (int i = 0; i < 20; i++) {
      lines.append("ST,+   0.11234 g\r\n");
    }
    return Files.writeString(folder.resolve("lines.txt"), lines);
  }

  @Test
  void without_any_port_the_search_says_so_and_opens_nothing() {
    try (TestDesk desk = new TestDesk(folder.resolve("lab"))) {
      FindModel model =
          new FindModel(
              desk.desk(),
              List::of,
              spec -> {
                throw new IOException("nothing may be opened");
              },
              SHORT);
      model.search("");
      assertEquals(FindModel.State.NOTHING, model.state().get());
      assertTrue(String.join(" ", model.evidence()).contains("no serial port"));
      model.search("nonsense");
      assertFalse(desk.desk().notices().list().isEmpty());
    }
  }

  @Test
  void a_format_is_learned_from_captured_lines_and_saved_only_when_told() throws IOException {
    Path lines = captured();
    try (TestDesk desk = new TestDesk(folder.resolve("lab"))) {
      FormatLesson.Opener links = balances()::link;
      LessonModel model = new LessonModel(desk.desk(), links, SHORT);
      model.begin("replay:" + lines);
      assertEquals(LessonModel.State.SHOW, model.state().get());
      model.listen();
      while (model.state().get() == LessonModel.State.SHOW) {
        model.skip();
      }
      assertEquals(LessonModel.State.LEARNED, model.state().get(), model.evidence().toString());
      assertTrue(String.join("\n", model.evidence()).contains("0.11234 g"));
      assertFalse(Files.exists(folder.resolve("lab").resolve("formats")));

      model.save("no good/name");
      assertEquals(LessonModel.State.LEARNED, model.state().get());
      model.save("left-bench");
      assertEquals(LessonModel.State.SAVED, model.state().get());
      assertTrue(model.usable().get().contains("format=left-bench"), model.usable().get());
    }
  }
}
