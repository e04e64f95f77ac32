package org.siltbench.station.window;

import java.util.function.LongSupplier;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.Scene;
import javafx.scene.input.InputEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import javafx.util.Duration;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.Scans;
import org.siltbench.station.window.look.Mnemonics;
import org.siltbench.station.window.look.Theme;
import org.siltbench.station.window.look.Zoom;
import org.siltbench.station.window.scan.PictureDrop;
import org.siltbench.station.window.scan.Wedge;
import org.siltbench.station.window.shell.Shell;

/** One window of the bench on the screen. */
public final class BenchStage {

  private static final int STEP_PERCENT = 10;

  private final Desk desk;
  private final Scene scene;
  private final Zoom zoom;
  private final Runnable askWho;
  private final Runnable fill;

  private BenchStage(Assembly assembly, LongSupplier nanos, double width, double height) {
    desk = assembly.desk();
    Shell shell = new Shell(desk, assembly.strip(), Screens.all());
    scene = new Scene(shell, width, height);
    Theme.of(desk.prefs().get(Prefs.Name.THEME)).dress(scene);
    zoom = Zoom.follow(scene, percent(desk.prefs().get(Prefs.Name.ZOOM)));
    Scans scans = new Scans(desk, shell::scans, shell::ask);
    Wedge.listen(scene, nanos, scans::take, scans::takeDish, scans::balanceTypes);
    scene.addEventFilter(KeyEvent.ANY, shell::key); // after the scanner, whose Enter is no key
    PictureDrop.take(scene, desk, scans::take);
    assembly.scans(scans::take);
    askWho = () -> shell.ask("");
    fill = () -> shell.fill(Screens.all());
    Mnemonics.listen(scene);
    desk.likes().subscribe(this::follow);
    scene.addEventFilter(KeyEvent.KEY_PRESSED, this::zoomKey);
    scene.addEventFilter(InputEvent.ANY, event -> desk.signOn().touch());
  }

  private static int percent(String word) {
    return word.matches("\\d{2,3}") ? Integer.parseInt(word) : 100;
  }

  /**
   * Shows it on a stage; the first screen comes in front.
   *
   * @param nanos the clock by which a scanner that types is told from a person
   */
  public static BenchStage show(
      Stage stage, Assembly assembly, LongSupplier nanos, double width, double height) {
    BenchStage made = strip(stage, assembly, nanos, width, height);
    made.fill("today");
    return made;
  }

  /**
   * Shows the strip alone, so that the mass is seen as early as can be.
   *
   * @param nanos the clock by which a scanner that types is told from a person
   */
  static BenchStage strip(
      Stage stage, Assembly assembly, LongSupplier nanos, double width, double height) {
    BenchStage made = new BenchStage(assembly, nanos, width, height);
    stage.setTitle(made.desk.texts(Shell.class).get("window.title"));
    stage.setScene(made.scene);
    stage.show();
    return made;
  }

  /** Adds the rest, and brings a screen in front unless one was asked for meanwhile. */
  void fill(String screen) {
    if (desk.lab().practice() && scene.getWindow() instanceof Stage stage) {
      stage.setTitle(desk.texts(Shell.class).get("window.title.practice"));
    }
    if (desk.front().get().isEmpty()) {
      desk.go(screen);
    }
    fill.run();
    second();
  }

  private void second() {
    Timeline clock = new Timeline(new KeyFrame(Duration.seconds(1), event -> desk.tick()));
    clock.setCycleCount(Animation.INDEFINITE);
    clock.play();
    scene.getWindow().addEventHandler(WindowEvent.WINDOW_HIDDEN, hidden -> clock.stop());
  }

  private void zoomKey(KeyEvent event) {
    if (!event.isShortcutDown()) {
      return;
    }
    if (event.getCode() == KeyCode.PLUS || event.getCode() == KeyCode.ADD) {
      zoom(zoom.percent() + STEP_PERCENT);
      event.consume();
    } else if (event.getCode() == KeyCode.MINUS || event.getCode() == KeyCode.SUBTRACT) {
      zoom(zoom.percent() - STEP_PERCENT);
      event.consume();
    }
  }

  /** Settings have changed: looks and size follow at once. */
  private void follow() {
    Theme.of(desk.prefs().get(Prefs.Name.THEME)).dress(scene);
    zoom.percent(percent(desk.prefs().get(Prefs.Name.ZOOM)));
  }

  private void zoom(int percent) {
    zoom.percent(percent);
    desk.like(Prefs.Name.ZOOM, Integer.toString(zoom.percent()));
  }

  /** Asks who is there. */
  void askWho() {
    askWho.run();
  }

  /** Its scene. */
  public Scene scene() {
    return scene;
  }

  /** Its zoom. */
  public Zoom zoom() {
    return zoom;
  }
}
