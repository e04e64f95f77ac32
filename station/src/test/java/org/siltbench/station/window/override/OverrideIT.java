package org.siltbench.station.window.override;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.weigh.PtyFeed;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.window.BenchTime;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.work.method.MethodBook;

/**
 * A failed check stops a pre-weighing; a supervisor lets it go on from the same screen, by keys.
 */
@Timeout(180)
class OverrideIT {

  private static final int FASTER = 5;
  private static final String EMPTY = "0.00000 g";
  private static final String WHY = "the weight was dropped, a new one comes at noon";

  @TempDir Path folder;
  private final BenchTime time = new BenchTime(FASTER);
  private PtyFeed balance;

  @BeforeEach
  void setUp() throws Exception {
    balance = new PtyFeed(folder.resolve("port"), 200 / FASTER, EMPTY);
  }

  @AfterEach
  void tearDown() throws Exception {
    balance.close();
  }

  /** SU supervises, AB weighs; the method stops at a failed check. */
  private Path labWithPeople() throws Exception {
    CommandLab lab = new CommandLab(folder.resolve("lab"), time).at(time.clock()).of(new Random(1));
    lab.ok("lab", "new", "--name", "North");
    Path methods = Files.createDirectories(lab.folder().resolve("methods"));
    Files.writeString(
        methods.resolve("strict.method"),
        MethodBook.of(folder)
            .get("epa-160.2")
            .text()
            .replace("epa-160.2", "strict")
            .replaceFirst("missing_check = *warn", "missing_check = stop"));
    lab.ok("balance", "describe", "--name", "Bench balance 1", "--balance", balance.spec());
    lab.ok("batch", "new", "--name", "A", "--lot", "L", "--method", "strict", "--count", "2");
    String su = Files.writeString(folder.resolve("SU"), "4711\n").toString();
    String ab = Files.writeString(folder.resolve("AB"), "1234\n").toString();
    lab.ok("people", "add", "SU", "--right", "supervise", "--new-pin-file", su);
    String[] weigher = {"people", "add", "AB", "--right", "weigh", "--new-pin-file", ab};
    List<String> words = new java.util.ArrayList<>(List.of(weigher));
    words.addAll(List.of("--operator", "SU", "--pin-file", su));
    lab.ok(words.toArray(new String[0]));
    return lab.folder();
  }

  private static void weigher(RobotWindow window) {
    RobotWindow.on(
        () -> {
          window.desk().signOn().on(new Person("AB", Right.WEIGH));
          return true;
        });
  }

  private static List<Entry> overrides(RobotWindow window) {
    return window.lab().register().history(About.balance("Bench balance 1")).stream()
        .filter(entry -> entry.kind().equals("check.overridden"))
        .toList();
  }

  @Test
  void where_a_check_stops_a_weighing_a_supervisor_lets_it_go_on_by_keyboard() throws Exception {
    try (RobotWindow window = RobotWindow.open(labWithPeople(), time)) {
      weigher(window);
      window.hear(balance.spec(), "check");
      window.awaitText("state", "Ready");
      failTheCheck(window);
      window.robot().push(KeyCode.F5);
      RobotWindow.await("the batch", () -> !window.node("start").isDisabled());
      window.robot().push(KeyCode.F12);
      window.awaitText("end", "supervisor says why");
      window.awaitText("override.open", "in spite");
      window.robot().push(KeyCode.ALT, KeyCode.I);
      RobotWindow.await("the reason", () -> window.node("override.reason").isFocused());
      window.shot("preweigh-override");

      window.robot().push(KeyCode.ENTER);
      sign(window, "SU", "4711");
      window.awaitNotice("reason");
      assertEquals(List.of(), overrides(window), "no reason, no entry");

      window.type("override.reason", WHY);
      sign(window, "SU", "0000");
      window.awaitNotice("SU");
      sign(window, "AB", "1234");
      window.awaitNotice("AB");
      assertEquals(List.of(), overrides(window), "neither a wrong PIN nor a weigher's");

      sign(window, "SU", "4711");
      window.awaitText("override.words", "SU has said");
      window.shot("preweigh-overridden");
      assertEquals(1, overrides(window).size());
      assertEquals("SU", overrides(window).get(0).by());
      assertEquals(WHY, overrides(window).get(0).data().get("reason"));
      assertEquals("AB", window.desk().signOn().initials().get(), "the weigher is still there");

      window.robot().push(KeyCode.F12);
      window.awaitText("step", "Place");
      balance.show("0.11234 g");
      window.awaitText("step", "Take it off");
      assertTrue(
          window.desk().notices().list().stream().anyMatch(n -> n.what().contains(WHY)),
          "each run says so");
      assertEquals("AB", lastWeighing(window).by());
      window.robot().clickOn(window.node("stop"));
      balance.show(EMPTY);
      window.robot().push(KeyCode.F4);
      window.awaitText("override.words", WHY);
      window.shot("check-overridden");
    }
  }

  private static Entry lastWeighing(RobotWindow window) {
    List<Entry> all = new java.util.ArrayList<>();
    window.lab().register().each(all::add);
    all.removeIf(entry -> !entry.kind().equals("weighing"));
    return all.get(all.size() - 1);
  }

  private void failTheCheck(RobotWindow window) {
    RobotWindow.on(() -> field(window, "weight.text", "100mg"));
    window.robot().push(KeyCode.F12);
    window.awaitText("step", "Place");
    balance.show("0.10081 g");
    RobotWindow.await(
        "the verdict", () -> !window.robot().lookup(".check-verdict").queryAll().isEmpty());
    balance.show(EMPTY);
    RobotWindow.await("the end", () -> window.desk().weighing().running().get().isEmpty());
  }

  private static boolean field(RobotWindow window, String id, String text) {
    ((javafx.scene.control.TextField) window.node(id)).setText(text);
    return true;
  }

  private static void sign(RobotWindow window, String initials, String pin) {
    window.type("override.initials", initials);
    window.robot().push(KeyCode.ENTER);
    RobotWindow.await("the PIN", () -> window.node("override.pin").isFocused());
    window.robot().write(pin, 0).push(KeyCode.ENTER);
  }

  @Test
  void on_the_check_screen_a_supervisor_who_is_there_is_asked_for_the_reason_alone()
      throws Exception {
    try (RobotWindow window = RobotWindow.open(labWithPeople(), Locale.GERMAN)) {
      window.hear(balance.spec(), "check");
      window.awaitText("override.open", "Trotzdem");
      window.robot().push(KeyCode.ALT, KeyCode.I);
      RobotWindow.await("the reason", () -> window.node("override.reason").isFocused());
      assertFalse(window.node("override.pin").getParent().getParent().isVisible());
      window.shot("check-override-german");
      window.robot().write("kein Gewicht zur Hand", 0).push(KeyCode.ENTER);
      window.awaitText("override.words", "AB hat um");
      assertEquals("missing", overrides(window).get(0).data().get("fault"));
    }
  }

  /** An open lab: nobody has a PIN, and the model needs no screen. */
  @Test
  void nothing_is_offered_where_the_check_has_passed_or_there_is_no_balance() {
    try (TestDesk desk = new TestDesk(folder.resolve("open"))) {
      OverrideModel model = new OverrideModel(desk.desk());
      model.look();
      assertEquals(OverrideModel.Way.NONE, model.offer().get().way());
      assertFalse(model.asksWho());
    }
  }
}
