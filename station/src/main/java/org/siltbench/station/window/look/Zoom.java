package org.siltbench.station.window.look;

import javafx.scene.Scene;

/** Keeps everything in proportion: all sizes are in em of one size that follows the window. */
public final class Zoom {

  private static final double BASE_PX = 15;
  private static final double WIDTH = 1366;
  private static final double HEIGHT = 768;
  private static final double MOST = 3.5;

  private final Scene scene;
  private int percent;

  private Zoom(Scene scene, int percent) {
    this.scene = scene;
    this.percent = percent;
  }

  /** Starts to follow the scene's size. */
  public static Zoom follow(Scene scene, int percent) {
    Zoom zoom = new Zoom(scene, percent);
    scene.widthProperty().subscribe(zoom::apply);
    scene.heightProperty().subscribe(zoom::apply);
    zoom.apply();
    return zoom;
  }

  /** The person's own factor, from 80 to 200 %. */
  public int percent() {
    return percent;
  }

  /** Sets it. */
  public void percent(int wanted) {
    percent = Math.max(80, Math.min(200, wanted));
    apply();
  }

  private void apply() {
    double fit = Math.min(scene.getWidth() / WIDTH, scene.getHeight() / HEIGHT);
    double size = BASE_PX * Math.max(0.9, Math.min(MOST, fit)) * percent / 100;
    scene.getRoot().setStyle("-fx-font-size: " + Math.round(size * 2) / 2.0 + "px;");
  }
}
