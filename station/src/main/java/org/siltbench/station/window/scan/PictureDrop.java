package org.siltbench.station.window.scan;

import java.io.File;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Scene;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.work.scan.PictureScan;

/** Pictures of bags as scans: files dropped on the window, or copied and pasted with Ctrl+V. */
public final class PictureDrop {

  private static final KeyCombination PASTE =
      new KeyCodeCombination(KeyCode.V, KeyCombination.SHORTCUT_DOWN);

  private final Desk desk;
  private final Consumer<String> scans;

  private PictureDrop(Desk desk, Consumer<String> scans) {
    this.desk = desk;
    this.scans = scans;
  }

  /** Takes pictures on this scene. */
  public static void take(Scene scene, Desk desk, Consumer<String> scans) {
    PictureDrop drop = new PictureDrop(desk, scans);
    scene.setOnDragOver(drop::over);
    scene.setOnDragDropped(drop::dropped);
    scene.addEventFilter(KeyEvent.KEY_PRESSED, drop::pasted);
  }

  private void over(DragEvent event) {
    if (event.getDragboard().hasFiles()) {
      event.acceptTransferModes(TransferMode.COPY);
    }
  }

  private void dropped(DragEvent event) {
    Dragboard board = event.getDragboard();
    event.setDropCompleted(board.hasFiles() && read(board.getFiles()));
    event.consume();
  }

  private void pasted(KeyEvent event) {
    if (PASTE.match(event) && Clipboard.getSystemClipboard().hasFiles()) {
      read(Clipboard.getSystemClipboard().getFiles());
      event.consume();
    }
  }

  private boolean read(List<File> files) {
    for (File file : files) {
      desk.work()
          .run(
              () -> PictureScan.read(file), scans, problem -> desk.notices().show("scan", problem));
    }
    return !files.isEmpty();
  }
}
