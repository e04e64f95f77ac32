package org.siltbench.demo.bench.window;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;

/** The least a JavaFX window can be: one label. Notes when it is drawn, and ends. */
public final class EmptyWindow {

  private static final int FRAMES = 2;

  private EmptyWindow() {}

  /** Opens it; the property {@code siltbench.window.once} names the file for the moment. */
  public static void main(String[] args) {
    Path file = Path.of(System.getProperty("siltbench.window.once", "empty-window.millis"));
    Platform.startup(() -> show(file));
  }

  private static void show(Path file) {
    Stage stage = new Stage();
    stage.setScene(new Scene(new Label("0.00000 g"), 1366, 768));
    stage.show();
    new AnimationTimer() {
      private int frames;

      @Override
      public void handle(long now) {
        if (++frames == FRAMES) {
          stop();
          note(file);
          System.exit(0);
        }
      }
    }.start();
  }

  private static void note(Path file) {
    long now = System.currentTimeMillis();
    Duration worked = ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    try {
      Files.writeString(file, now + " " + worked.toMillis());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
