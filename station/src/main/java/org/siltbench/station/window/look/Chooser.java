package org.siltbench.station.window.look;

import java.io.File;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import org.siltbench.station.window.desk.Texts;

/**
 * The computer's own way to choose a file or a folder, beside a field that takes its name by
 * typing, pasting and dropping too. It belongs to no window, so it stands in front of none: a
 * weighing and its messages go on behind it.
 */
public final class Chooser {

  /** What is chosen. */
  public enum Kind {
    FILE,
    FOLDER
  }

  /** Asks the person; a test answers for them. */
  interface Ask {
    Optional<File> choose(Kind kind, String title, Optional<File> near);
  }

  private Chooser() {}

  /** The field with its caption, and the button beside it. */
  public static HBox beside(Texts texts, String key, TextField field, Kind kind) {
    return beside(texts, key, field, kind, Chooser::ask);
  }

  static HBox beside(Texts texts, String key, TextField field, Kind kind, Ask ask) {
    Texts own = Texts.of(Chooser.class, texts.locale());
    Node captioned = Controls.field(texts, key, field);
    HBox.setHgrow(captioned, Priority.ALWAYS);
    Button choose =
        Controls.button(
            own,
            "choose",
            () ->
                ask.choose(kind, own.get("choose.title"), near(field.getText()))
                    .ifPresent(file -> field.setText(file.toString())));
    choose.setId(key + ".choose");
    HBox line = Controls.line(captioned, choose);
    HBox.setHgrow(line, Priority.ALWAYS);
    return line;
  }

  /** The folder to begin in: of what is named already, if it is there. */
  static Optional<File> near(String named) {
    File file = new File(named.strip());
    File folder = file.isDirectory() ? file : file.getAbsoluteFile().getParentFile();
    return Optional.ofNullable(folder).filter(File::isDirectory).filter(there -> !named.isBlank());
  }

  private static Optional<File> ask(Kind kind, String title, Optional<File> near) {
    if (kind == Kind.FOLDER) {
      DirectoryChooser folders = new DirectoryChooser();
      folders.setTitle(title);
      near.ifPresent(folders::setInitialDirectory);
      return Optional.ofNullable(folders.showDialog(null));
    }
    FileChooser files = new FileChooser();
    files.setTitle(title);
    near.ifPresent(files::setInitialDirectory);
    return Optional.ofNullable(files.showOpenDialog(null));
  }
}
