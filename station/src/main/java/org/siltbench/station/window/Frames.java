package org.siltbench.station.window;

import javafx.animation.AnimationTimer;

/** Waits for frames to be drawn. */
final class Frames extends AnimationTimer {

  private final Runnable then;
  private int left;

  private Frames(int count, Runnable then) {
    this.left = count;
    this.then = then;
  }

  /** Does something after so many frames, on the screen's thread. */
  static void after(int count, Runnable then) {
    new Frames(count, then).start();
  }

  @Override
  public void handle(long now) {
    left--;
    if (left == 0) {
      stop();
      then.run();
    }
  }
}
