package org.siltbench.station.window;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.animation.AnimationTimer;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;

/**
 * For measuring the start: notes the moment at which the first live mass has been drawn, and closes
 * the window.
 */
final class FirstMass extends AnimationTimer {

  private static final int FRAMES = 2;

  private final Scene scene;
  private final Path file;
  private final Runnable close;
  private int frames;

  private FirstMass(Scene scene, Path file, Runnable close) {
    this.scene = scene;
    this.file = file;
    this.close = close;
  }

  /** Waits for it. */
  static void await(Scene scene, Path file, Runnable close) {
    new FirstMass(scene, file, close).start();
  }

  @Override
  public void handle(long now) {
    Node mass = scene.getRoot().lookup("#mass");
    boolean shown = mass instanceof Labeled label && label.getText().matches(".*\\d.*");
    if (shown && ++frames == FRAMES) {
      stop();
      note();
      close.run();
    }
  }

  private void note() {
    try {
      Files.writeString(file, Long.toString(System.currentTimeMillis()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
