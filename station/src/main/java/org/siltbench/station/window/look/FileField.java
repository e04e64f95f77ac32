package org.siltbench.station.window.look;

import java.io.File;
import java.util.List;
import javafx.scene.control.TextField;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/**
 * A field for a file's or a folder's name: typed, pasted, or dropped on it from the file manager.
 */
public final class FileField extends TextField {

  /** An empty field. */
  public FileField() {
    setOnDragOver(this::over);
    setOnDragDropped(this::dropped);
  }

  private void over(DragEvent event) {
    if (event.getDragboard().hasFiles()) {
      event.acceptTransferModes(TransferMode.COPY);
      event.consume();
    }
  }

  private void dropped(DragEvent event) {
    List<File> files = event.getDragboard().getFiles();
    if (!files.isEmpty()) {
      setText(files.get(0).toString());
      event.setDropCompleted(true);
      event.consume();
    }
  }
}
