package org.siltbench.station.window;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import javafx.animation.AnimationTimer;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;

/**
 * For measuring the start: notes the moment at which the first live mass has been drawn, and closes
 * the window once the rest of it is there too.
 */
final class FirstMass extends AnimationTimer {

  private static final int FRAMES = 2;

  private final Scene scene;
  private final Path file;
  private final Runnable close;
  private int frames;
  private boolean noted;
  private boolean filled;

  private FirstMass(Scene scene, Path file, Runnable close) {
    this.scene = scene;
    this.file = file;
    this.close = close;
  }

  /** Waits for it. */
  static FirstMass await(Scene scene, Path file, Runnable close) {
    FirstMass waiting = new FirstMass(scene, file, close);
    waiting.start();
    return waiting;
  }

  /** Rail and screen are there. */
  void filled() {
    filled = true;
    end();
  }

  private void end() {
    if (noted && filled) {
      close.run();
    }
  }

  @Override
  public void handle(long now) {
    Node mass = scene.getRoot().lookup("#mass");
    boolean shown = mass instanceof Labeled label && label.getText().matches(".*\\d.*");
    if (shown && ++frames == FRAMES) {
      stop();
      note();
      noted = true;
      end();
    }
  }

  /** The moment, and the processor time that this process had taken until then, in ms. */
  private void note() {
    long now = System.currentTimeMillis();
    Duration worked = ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    try {
      Files.writeString(file, now + " " + worked.toMillis());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
