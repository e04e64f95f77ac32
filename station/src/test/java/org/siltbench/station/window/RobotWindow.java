package org.siltbench.station.window;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.people.People;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.look.Theme;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/**
 * The whole window under a robot, without a screen: real threads, a real lab folder. A picture of
 * any state goes to {@code target/pictures/window}, with {@code -Dsiltbench.docs.write=true} to
 * {@code docs/pictures/window}.
 */
public final class RobotWindow implements AutoCloseable {

  private static final long PATIENCE_S = 30;

  private final FxRobot robot = new FxRobot();
  private final ExecutorService bench = Executors.newSingleThreadExecutor();
  private final ExecutorService runs = Executors.newSingleThreadExecutor();
  private final ExecutorService live = Executors.newSingleThreadExecutor();
  private final OpenLab lab;
  private final Assembly assembly;
  private final BenchStage window;
  private final Stage stage;

  /** Opens the window over a lab folder that is there, or over a new practice lab. */
  public static RobotWindow open(Path folder, Locale locale) {
    try {
      FxToolkit.registerPrimaryStage();
    } catch (TimeoutException e) {
      throw new AssertionError(e);
    }
    return new RobotWindow(folder, locale);
  }

  public static RobotWindow open(Path folder) {
    return open(folder, Locale.ENGLISH);
  }

  private RobotWindow(Path folder, Locale locale) {
    Timebase time = Timebase.system();
    Setting setting =
        new Setting(
            "AB", time.withZone(ZoneOffset.UTC), new Random(1), new LifeSubjects(), note -> {});
    lab =
        LabFolder.exists(folder)
            ? LabFolder.open(folder, setting)
            : LabFolder.create(folder, "test", true, setting);
    assembly =
        new Assembly(
            new Assembly.Outside(
                lab,
                new People(folder, lab.clock(), new Random(2)),
                spec -> new Balances(time, folder.resolve("formats")).open(spec),
                time,
                bench,
                runs,
                live,
                Platform::runLater,
                cue -> {},
                locale));
    stage = on(Stage::new);
    window = on(() -> BenchStage.show(stage, assembly, 1366, 768));
    on(
        () -> {
          desk().signOn().on(new Person("AB", Right.SUPERVISE));
          return true;
        });
  }

  public Desk desk() {
    return assembly.desk();
  }

  public Assembly assembly() {
    return assembly;
  }

  public OpenLab lab() {
    return lab;
  }

  public FxRobot robot() {
    return robot;
  }

  public Scene scene() {
    return window.scene();
  }

  /** Does something on the screen's thread and waits for its answer. */
  public static <T> T on(Callable<T> what) {
    FutureTask<T> task = new FutureTask<>(what);
    Platform.runLater(task);
    try {
      return task.get(PATIENCE_S, TimeUnit.SECONDS);
    } catch (InterruptedException | ExecutionException | TimeoutException e) {
      throw new AssertionError(e);
    }
  }

  /** Waits until it is so, looking on the screen's thread. */
  public static void await(String what, BooleanSupplier until) {
    long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
    while (!on(until::getAsBoolean)) {
      if (System.nanoTime() > deadline) {
        throw new AssertionError("never came: " + what);
      }
      Thread.onSpinWait();
    }
  }

  /** A node by its id. */
  public Node node(String id) {
    Node node = find(id);
    if (node == null) {
      throw new AssertionError("no node " + id);
    }
    return node;
  }

  /** By comparing, since a selector would take a dot in an ID for a style class. */
  private @Nullable Node find(String id) {
    return scene().getRoot().lookupAll("*").stream()
        .filter(node -> id.equals(node.getId()))
        .findFirst()
        .orElse(null);
  }

  /** The text of a label or button by its id; empty if it is not there. */
  public String text(String id) {
    Node node = find(id);
    return node instanceof Labeled labeled ? labeled.getText() : "";
  }

  /** Waits until a label or button says this. */
  public void awaitText(String id, String wanted) {
    await(id + " says " + wanted, () -> text(id).contains(wanted));
  }

  /** Takes a picture in light and in dark. */
  public void shot(String name) {
    for (Theme theme : new Theme[] {Theme.DARK, Theme.LIGHT}) {
      shot(theme == Theme.LIGHT ? name : name + '-' + theme.word(), theme);
    }
  }

  /** Takes a picture in one look. */
  public void shot(String name, Theme theme) {
    WritableImage image =
        on(
            () -> {
              theme.dress(scene());
              return scene().snapshot(null);
            });
    write(name, image);
    on(
        () -> {
          Theme.LIGHT.dress(scene());
          return true;
        });
  }

  /** Makes the window as large as a screen. */
  public void size(double width, double height) {
    on(
        () -> {
          stage.setWidth(width);
          stage.setHeight(height);
          return true;
        });
  }

  private static void write(String name, WritableImage image) {
    int w = (int) image.getWidth();
    int h = (int) image.getHeight();
    BufferedImage picture = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    PixelReader pixels = image.getPixelReader();
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        picture.setRGB(x, y, pixels.getArgb(x, y));
      }
    }
    try {
      Path folder = Files.createDirectories(folder());
      ImageIO.write(picture, "png", folder.resolve(name + ".png").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path folder() {
    return Boolean.getBoolean("siltbench.docs.write")
        ? Path.of(System.getProperty("siltbench.root", ".."), "docs", "pictures", "window")
        : Path.of("target", "pictures", "window");
  }

  @Override
  public void close() {
    on(
        () -> {
          stage.hide();
          return true;
        });
    assembly.close();
    runs.shutdownNow();
    live.shutdownNow();
    bench.shutdown();
    lab.close();
  }
}
