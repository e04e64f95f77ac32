package org.siltbench.station.window.look;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.desk.Texts;
import org.testfx.api.FxToolkit;

/**
 * What comes back from the computer's own chooser stands in the field, as a name by which the file
 * is read. The chooser itself is the computer's: here a stand-in answers for it.
 */
class ChooserIT {

  @TempDir Path folder;
  private final List<Optional<File>> near = new ArrayList<>();

  @BeforeEach
  void toolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  private String chosen(String before, Optional<File> answer) {
    return RobotWindow.on(
        () -> {
          TextField field = new TextField(before);
          Texts texts = Texts.of(Chooser.class, Locale.ENGLISH);
          Chooser.Ask person =
              (kind, title, beginsIn) -> {
                assertEquals(Chooser.Kind.FILE, kind);
                near.add(beginsIn);
                return answer;
              };
          HBox line = Chooser.beside(texts, "choose", field, Chooser.Kind.FILE, person);
          button(line).fire();
          return field.getText();
        });
  }

  private static Button button(HBox line) {
    for (Node part : line.getChildren()) {
      if (part instanceof Button button) {
        return button;
      }
    }
    throw new AssertionError("no button beside the field");
  }

  @Test
  void a_file_with_blanks_and_umlauts_in_its_name_is_read_by_what_stands_in_the_field()
      throws IOException {
    Path notes =
        Files.writeString(folder.resolve("Alder Fork Übergabe 2.csv"), "filter;volume_ml\n");
    String name = chosen(folder.resolve("gone.csv").toString(), Optional.of(notes.toFile()));
    assertEquals("filter;volume_ml\n", Files.readString(Path.of(name)));
    assertEquals(List.of(Optional.of(folder.toFile())), near, "it begins beside what was named");
  }

  @Test
  void nothing_chosen_leaves_the_field_as_it_was() {
    assertEquals("typed.csv", chosen("typed.csv", Optional.empty()));
    assertEquals("", chosen("", Optional.empty()));
    assertEquals(Optional.empty(), near.get(1), "with nothing named the computer chooses where");
  }
}
