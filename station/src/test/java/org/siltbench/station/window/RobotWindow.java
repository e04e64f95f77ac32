package org.siltbench.station.window;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.siltbench.balance.Balances;
import org.siltbench.balance.Timebase;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.people.People;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.said.Words;
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
  private static final long BETWEEN_LOOKS_NANOS = 15_000_000L;

  private final FxRobot robot = new FxRobot();
  private final ExecutorService bench = Executors.newSingleThreadExecutor();
  private final ExecutorService runs = Executors.newSingleThreadExecutor();
  private final ExecutorService live = Executors.newCachedThreadPool();
  private final OpenLab lab;
  private final Assembly assembly;
  private final BenchStage window;
  private final Stage stage;
  private final Sweep sweep;
  private long keys;
  private boolean scanning;

  /** Opens the window over a lab folder that is there, or over a new practice lab. */
  public static RobotWindow open(Path folder, Locale locale) {
    toolkit();
    return new RobotWindow(folder, locale, new BenchTime(1));
  }

  /** In English; marked, so that what comes from no bundle is found, but for pictures to keep. */
  public static RobotWindow open(Path folder) {
    return open(folder, english());
  }

  private static Locale english() {
    return Boolean.getBoolean("siltbench.docs.write") ? Words.SCREEN_ENGLISH : MarkedWords.LANGUAGE;
  }

  /** The same on a clock that runs faster. */
  public static RobotWindow open(Path folder, Timebase time) {
    toolkit();
    return new RobotWindow(folder, english(), time);
  }

  /** The same, with nobody signed on yet. */
  public static RobotWindow openWithNobody(Path folder, Timebase time) {
    toolkit();
    RobotWindow window = new RobotWindow(folder, english(), time);
    on(
        () -> {
          window.desk().signOn().off();
          return true;
        });
    return window;
  }

  /** Hears a balance, and goes to a screen. */
  public void hear(String spec, String screen) {
    on(
        () -> {
          assembly.connect(spec);
          desk().go(screen);
          return true;
        });
  }

  private static void toolkit() {
    try {
      FxToolkit.registerPrimaryStage();
    } catch (TimeoutException e) {
      throw new AssertionError(e);
    }
  }

  private RobotWindow(Path folder, Locale locale, Timebase time) {
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
                bench,
                runs,
                live,
                live,
                Platform::runLater,
                cue -> {},
                locale));
    sweep = new Sweep(assembly.desk(), lab);
    stage = on(Stage::new);
    window = on(() -> BenchStage.show(stage, assembly, this::keyTime, 1366, 768));
    on(
        () -> {
          desk().signOn().on(new Person("AB", Right.SUPERVISE));
          return true;
        });
    await("the keyboard", stage::isFocused); // before that a robot's keys reach nobody
  }

  /** Keys of a robot come as slowly as a person's; only {@link #scan} is as fast as a scanner. */
  private long keyTime() {
    return keys += scanning ? 8_000_000L : 1_000_000_000L;
  }

  /** What a keyboard-wedge scanner does, whatever has the focus: quick keys, then Enter. */
  public void scan(String text) {
    on(
        () -> {
          scanning = true;
          Node focus = scene().getFocusOwner();
          EventTarget target = focus == null ? scene() : focus;
          for (char c : text.toCharArray()) {
            key(target, KeyCode.UNDEFINED, String.valueOf(c));
          }
          key(target, KeyCode.ENTER, "\r");
          scanning = false;
          return true;
        });
  }

  private static void key(EventTarget target, KeyCode code, String text) {
    for (var type : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_TYPED, KeyEvent.KEY_RELEASED)) {
      boolean typed = type == KeyEvent.KEY_TYPED;
      Event.fireEvent(
          target,
          new KeyEvent(
              type,
              typed ? text : KeyEvent.CHAR_UNDEFINED,
              typed ? "" : text,
              typed ? KeyCode.UNDEFINED : code,
              false,
              false,
              false,
              false));
    }
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
    while (!on(() -> holds(until))) {
      if (System.nanoTime() > deadline) {
        throw new AssertionError("never came: " + what);
      }
      LockSupport.parkNanos(BETWEEN_LOOKS_NANOS);
    }
  }

  /** What looks at a node that is not there yet does not hold yet. */
  private static boolean holds(BooleanSupplier until) {
    try {
      return until.getAsBoolean();
    } catch (NoNode notYet) {
      return false;
    }
  }

  private static final class NoNode extends AssertionError {
    private static final long serialVersionUID = 1;

    NoNode(String id) {
      super("no node " + id);
    }
  }

  /** A node by its id. */
  public Node node(String id) {
    return find(id).orElseThrow(() -> new NoNode(id));
  }

  /** Any id: those of texts have dots, which a selector would take for a style class. */
  private Optional<Node> find(String id) {
    return scene().getRoot().lookupAll("*").stream().filter(n -> id.equals(n.getId())).findFirst();
  }

  /** The text of a label or button by its id; empty if it is not there. */
  public String text(String id) {
    return find(id)
        .map(n -> n instanceof Labeled labeled ? MarkedWords.plain(labeled.getText()) : "")
        .orElse("");
  }

  /** Waits until a label or button says this. */
  public void awaitText(String id, String wanted) {
    try {
      await(id + " says " + wanted, () -> text(id).contains(wanted));
      sweep();
    } catch (AssertionError e) {
      shot("failed-" + id);
      throw new AssertionError(
          id + " says " + text(id) + ", the strip " + text("state") + ' ' + text("mass"), e);
    }
  }

  /** Takes a picture in light and in dark. */
  public void shot(String name) {
    for (Theme theme : new Theme[] {Theme.DARK, Theme.LIGHT}) {
      shot(theme == Theme.LIGHT ? name : name + '-' + theme.word(), theme);
    }
  }

  /** What the test itself says or records; it is no text of the window. */
  public void own(String... texts) {
    on(
        () -> {
          List.of(texts).forEach(sweep::own);
          return true;
        });
  }

  /** Looks over all texts for English that a window in another language would show. */
  public void sweep() {
    on(
        () -> {
          sweep.over(scene().getRoot());
          return true;
        });
  }

  /** Takes a picture in one look. */
  public void shot(String name, Theme theme) {
    sweep();
    WritableImage image =
        on(
            () -> {
              theme.dress(scene());
              scene().getRoot().applyCss();
              assembly.strip().redraw();
              return scene().snapshot(null);
            });
    write(name, image);
    on(
        () -> {
          Theme.LIGHT.dress(scene());
          return true;
        });
  }

  /** Types into a field, in place of what stands there. */
  public void type(String field, String text) {
    focus(field);
    robot.push(KeyCode.CONTROL, KeyCode.A).push(KeyCode.DELETE).write(text, 0);
    await(field + " has " + text, () -> text.equals(typed(node(field))));
  }

  private static String typed(Node field) {
    return field instanceof ComboBox<?> box
        ? box.getEditor().getText()
        : ((TextInputControl) field).getText();
  }

  /** Leads the focus to a node and presses a key there. */
  public void press(String id, KeyCode key) {
    focus(id);
    robot.push(key);
  }

  /** Waits for a node, which may come by a key that was just pressed, and leads the focus to it. */
  private void focus(String id) {
    await(
        "the focus on " + id,
        () -> {
          node(id).requestFocus();
          return node(id).isFocused();
        });
  }

  /** Waits for a message under the strip. */
  public void awaitNotice(String part) {
    await(
        "a notice: " + part,
        () ->
            desk().notices().list().stream()
                .anyMatch(n -> MarkedWords.plain(n.what()).contains(part)));
    sweep();
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
    int[] pixels = new int[w * h];
    image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), pixels, 0, w);
    picture.setRGB(0, 0, w, h, pixels, 0, w);
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
          sweep.over(scene().getRoot());
          stage.hide();
          assembly.close();
          return true;
        });
    runs.shutdownNow();
    live.shutdownNow();
    bench.shutdown();
    TestDesk.ended(runs, live, bench);
    lab.close();
    if (!sweep.found().isEmpty()) {
      throw new AssertionError("English in every language:\n" + String.join("\n", sweep.found()));
    }
  }
}
