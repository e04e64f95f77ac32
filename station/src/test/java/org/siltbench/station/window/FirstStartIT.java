package org.siltbench.station.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.weigh.PtyFeed;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/**
 * The window as {@code siltbench} without words opens it, from the first question on: the practice
 * lab, a first weighing, a balance found on a pseudo-terminal and its format learned, the window
 * again in German. Only the toolkit and the pace of the practice balance are the test's.
 */
@Timeout(240)
class FirstStartIT {

  private static final double FASTER = 20;
  private static final String EMPTY = "ST,+   0.00000 g";
  private static final String LOAD = "ST,+   0.11234 g";

  @TempDir Path folder;
  private final FxRobot robot = new FxRobot();

  @Test
  void from_the_first_question_to_a_real_balance_and_another_language() throws Exception {
    FxToolkit.registerPrimaryStage();
    CommandLab program =
        new CommandLab(folder.resolve("bench"))
            .practice(FASTER)
            .offering(new CommandEntry("window", "", () -> new WindowTask(() -> true, () -> {})));
    ExecutorService main = Executors.newSingleThreadExecutor();
    PtyFeed balance = new PtyFeed(folder.resolve("port"), 50, EMPTY);
    try {
      Future<Integer> ended = main.submit(() -> program.run("window"));
      window("the question", "welcome.practice");
      robot.push(KeyCode.SPACE);
      window("the first weighing", "step-PLACE");
      assertFalse(Files.exists(folder.resolve("bench")), "only the practice lab was made");
      signOn();
      firstWeighing();
      find(balance);
      learn(balance);
      press("use.go");
      says("state", "Ready");
      inGerman();
      close();
      assertEquals(0, ended.get(60, TimeUnit.SECONDS), program::err);
      assertEquals(1, entries("weighing"));
      assertTrue(VerifyLab.of(practice(), List.of()).ok());
    } finally {
      main.shutdownNow();
      balance.close();
    }
  }

  /** Each step is kept as it comes: at this pace one may be over before anybody looks. */
  private void firstWeighing() {
    List<String> steps = new ArrayList<>();
    RobotWindow.on(
        () -> {
          VBox rows = (VBox) node("step-PLACE").orElseThrow().getParent();
          rows.getChildren()
              .addListener(
                  (ListChangeListener<Node>)
                      change ->
                          rows.getChildren().stream()
                              .filter(FirstStartIT::isNow)
                              .map(Node::getId)
                              .filter(step -> !steps.contains(step))
                              .forEach(steps::add));
          return true;
        });
    robot.push(KeyCode.F12);
    RobotWindow.await("a mass on the disk", () -> entries("weighing") == 1);
    RobotWindow.await("the end", () -> nodes().noneMatch(FirstStartIT::isNow));
    assertEquals(
        List.of("step-PLACE", "step-WAIT", "step-RECORDED"),
        RobotWindow.on(() -> steps.stream().filter(step -> !step.equals("step-LOOK")).toList()));
  }

  private static void find(PtyFeed balance) {
    press("pane-real");
    text("spec", balance.spec());
    press("find.one");
    says("find.state", "Found");
  }

  /** The far end of the pseudo-terminal does what the lesson asks to be shown. */
  private void learn(PtyFeed balance) {
    press("lesson.begin");
    says("lesson.show", "empty pan");
    press("lesson.listen");
    says("lesson.show", "left alone");
    balance.show(LOAD);
    press("lesson.listen");
    says("lesson.show", "hand waving");
    press("lesson.listen");
    int[] looked = {0};
    RobotWindow.await(
        "the hand was seen",
        () -> {
          balance.show("US,+   0.1%04d g".formatted(looked[0]++ * 137 % 10_000));
          return saidBy("lesson.show").contains("more than the balance");
        });
    press("lesson.skip");
    says("lesson.show", "can be told");
    says("lesson.evidence", "'US' means moving");
    assertFalse(Files.exists(practice().resolve("formats")), "nothing is saved before it is told");
    text("format.name", "left");
    press("lesson.save");
    RobotWindow.await("the saved name", () -> typed("spec").contains("format=left"));
    balance.show(EMPTY);
  }

  private void inGerman() {
    robot.push(KeyCode.CONTROL, KeyCode.COMMA);
    choose("Looks");
    press("language-de");
    press("again");
    RobotWindow.await("German", () -> node("state").filter(FirstStartIT::isGerman).isPresent());
    says("state", "Bereit");
  }

  private static void close() {
    RobotWindow.on(
        () -> {
          stage().hide();
          return true;
        });
  }

  private void signOn() {
    RobotWindow.await("who is there", () -> node("initials").filter(Node::isFocused).isPresent());
    robot.write("AB", 0).push(KeyCode.ENTER);
    RobotWindow.await("signed on", () -> node("initials").filter(Node::isFocused).isEmpty());
  }

  private static boolean isGerman(Node state) {
    return Stream.of("Bereit", "Stumm", "Keine Waage", "Beobachtet")
        .anyMatch(((Labeled) state).getText()::contains);
  }

  private Path practice() {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(place -> Files.isDirectory(place.resolve("ledger"))).findFirst().get();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private long entries(String kind) {
    try (Stream<Path> files = Files.list(practice().resolve("ledger"))) {
      String word = "\"kind\":\"" + kind + '"';
      return Files.readString(files.findFirst().orElseThrow())
          .lines()
          .filter(line -> line.contains(word))
          .count();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stage stage() {
    return (Stage)
        Window.getWindows().stream()
            .filter(window -> window instanceof Stage && window.isShowing())
            .reduce((a, b) -> b)
            .orElseThrow();
  }

  private static Stream<Node> nodes() {
    return Window.getWindows().stream()
        .filter(Window::isShowing)
        .flatMap(window -> window.getScene().getRoot().lookupAll("*").stream());
  }

  private static Optional<Node> node(String id) {
    return nodes().filter(node -> id.equals(node.getId())).findFirst();
  }

  private static void window(String what, String id) {
    RobotWindow.await(what, () -> node(id).isPresent() && stage().isFocused());
  }

  /** A step of the first weighing that is on now. */
  private static boolean isNow(Node node) {
    String id = node.getId();
    return id != null && id.startsWith("step-") && node.getStyleClass().contains("picked");
  }

  private static void says(String id, String words) {
    String[] last = {""};
    try {
      RobotWindow.await(
          id + " says " + words,
          () -> {
            last[0] = saidBy(id);
            return last[0].contains(words);
          });
    } catch (AssertionError e) {
      throw new AssertionError(id + " says " + last[0] + ", not " + words, e);
    }
  }

  private static String saidBy(String id) {
    return node(id)
        .map(n -> n instanceof Labeled label ? label.getText() : ((TextArea) n).getText())
        .orElse("");
  }

  private static String typed(String id) {
    return ((TextField) node(id).orElseThrow()).getText();
  }

  private static void text(String id, String text) {
    RobotWindow.await("field " + id, () -> node(id).isPresent());
    RobotWindow.on(
        () -> {
          ((TextField) node(id).orElseThrow()).setText(text);
          return true;
        });
  }

  private static void press(String id) {
    RobotWindow.await("button " + id, () -> node(id).filter(n -> !n.isDisabled()).isPresent());
    fire(node(id).orElseThrow());
  }

  private static void choose(String word) {
    RobotWindow.await("choice " + word, () -> labelled(word).isPresent());
    fire(labelled(word).orElseThrow());
  }

  private static Optional<Node> labelled(String word) {
    return nodes()
        .filter(
            n -> n instanceof ButtonBase button && word.equals(button.getText().replace("_", "")))
        .findFirst();
  }

  private static void fire(Node node) {
    RobotWindow.on(
        () -> {
          ((ButtonBase) node).fire();
          return true;
        });
  }
}
