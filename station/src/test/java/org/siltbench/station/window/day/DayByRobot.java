package org.siltbench.station.window.day;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.siltbench.station.command.PracticeProcess;
import org.siltbench.station.life.Filters;
import org.siltbench.station.window.BenchTime;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.work.batch.Batches;

/** The same day in the window: keys, a scanner that types, a hand at the balance; no mouse. */
final class DayByRobot {

  private final BenchTime time = new BenchTime(Plan.FASTER);
  private final Path folder;
  private final Path port;
  private final PracticeProcess balance;
  private final String queue;
  private Plan plan = new Plan(List.of());
  private Plan.Round round = Plan.Round.CLEAN;
  private List<String> ids = List.of();
  private RobotWindow window;

  /** Labels come out of this queue; into a file where there is none. */
  DayByRobot(Path folder, Path port, PracticeProcess balance, String queue) {
    this.queue = queue;
    this.folder = folder;
    this.port = port;
    this.balance = balance;
  }

  void run() throws Exception {
    try (RobotWindow opened = RobotWindow.openWithNobody(folder, time)) {
      window = opened;
      signOn();
      connect();
      morning();
      checkWeight();
      batch();
      preWeigh();
      papers();
      time.pass(Plan.TRIP_TIME);
      receive();
      dry(Plan.Round.FIRST, "not tested yet");
      dry(Plan.Round.SECOND, "constant");
      evening();
    }
  }

  private void signOn() {
    if (!RobotWindow.on(() -> window.node("initials").isVisible())) {
      window.robot().push(KeyCode.F1);
    }
    window.type("initials", Plan.WHO);
    window.robot().push(KeyCode.ENTER);
    RobotWindow.await("who", () -> window.desk().signOn().initials().get().equals(Plan.WHO));
  }

  private void connect() {
    window.robot().push(KeyCode.CONTROL, KeyCode.COMMA);
    RobotWindow.await("the settings", () -> window.node("balance") != null);
    window.type("balance", "serial:" + port);
    window.robot().push(KeyCode.ALT, KeyCode.U);
    window.awaitText("state", "Ready");
  }

  private void morning() {
    window.robot().push(KeyCode.F4);
    window.robot().push(KeyCode.ALT, KeyCode.B);
    window.awaitText("balance.state", "no record");
    window.type("name", Plan.BALANCE);
    window.type("serial", "SN 2217");
    window.type("resolution", "0.00001");
    window.type("capacity", "60");
    window.press("save.balance", KeyCode.SPACE);
    window.awaitNotice("The balance is recorded");
    window.robot().push(KeyCode.ALT, KeyCode.W);
    window.type("weight.name", Plan.WEIGHT);
    window.type("nominal", "0.1");
    window.type("certified", "0.100003");
    window.type("expanded", "0.006");
    window.press("save.weight", KeyCode.SPACE);
    window.awaitNotice("The weight is recorded");
    window.press("pane-room", KeyCode.SPACE);
    window.type("temperature", "21.4");
    window.type("humidity", "46");
    window.robot().push(KeyCode.ALT, KeyCode.N);
    window.awaitNotice("The room is noted");
  }

  private void checkWeight() {
    window.press("pane-check", KeyCode.SPACE);
    window.type("weight", Plan.WEIGHT);
    window.robot().push(KeyCode.F12);
    window.awaitText("step", "Place");
    balance.act("put " + plan.grams(Plan.WEIGHT, round));
    RobotWindow.await("the end", () -> window.desk().weighing().running().get().isEmpty());
    window.awaitText("last", Plan.WEIGHT);
    balance.act("off");
  }

  private void batch() {
    window.robot().push(KeyCode.F3);
    window.type("every", Plan.EVERY);
    window.type("length", Plan.LENGTH);
    for (String none : List.of("field-pct", "duplicate-pct", "spare-pct", "controls")) {
      window.type(none, "0");
    }
    window.robot().push(KeyCode.ALT, KeyCode.C);
    window.awaitText("counted", "3 filters");
    window.type("name", Plan.BATCH);
    window.type("lot", "GF-12");
    window.robot().push(KeyCode.ALT, KeyCode.M);
    window.awaitNotice(Plan.BATCH);
    var register = window.lab().register();
    String code = Batches.require(register, Plan.BATCH).code();
    ids = Filters.ofBatch(register, code).stream().map(filter -> filter.id()).toList();
    plan = new Plan(ids);
  }

  private void preWeigh() {
    window.robot().push(KeyCode.F5);
    RobotWindow.await("a batch", () -> !window.node("start").isDisabled());
    window.robot().push(KeyCode.F12);
    ids.forEach(this::weigh);
    onPan(Plan.WEIGHT);
    window.awaitText("end", "3 masses recorded");
    balance.act("off");
  }

  /** Places what is asked for, and takes it off when the strip says so. */
  private void weigh(String asked) {
    onPan(asked);
    window.awaitText("step", "Take it off");
    balance.act("off");
  }

  private void onPan(String asked) {
    RobotWindow.await(
        asked,
        () -> window.text("step").startsWith("Place") && window.text("what").contains(asked));
    balance.act("put " + plan.grams(asked, round));
  }

  private void papers() {
    window.robot().push(KeyCode.F3).push(KeyCode.ALT, KeyCode.L);
    RobotWindow.await("papers", () -> window.node("stock") != null);
    labels();
    window.robot().push(KeyCode.ALT, KeyCode.B);
    window.awaitNotice("The field sheet is");
    window.robot().push(KeyCode.ALT, KeyCode.T);
    RobotWindow.await("trip", () -> window.node("issue") != null);
    window.type("trip", Plan.TRIP);
    window.type("to", "CD");
    window.robot().push(KeyCode.ALT, KeyCode.I);
    window.awaitNotice("out on");
  }

  private void labels() {
    if (queue.isEmpty()) {
      window.robot().push(KeyCode.ALT, KeyCode.D);
      window.awaitNotice("The labels are");
      return;
    }
    RobotWindow.await("the queue", () -> choice("queue").getItems().contains(queue));
    while (!queue.equals(RobotWindow.on(() -> choice("queue").getValue()))) {
      window.press("queue", KeyCode.DOWN);
    }
    window.robot().push(KeyCode.ALT, KeyCode.R);
    window.awaitNotice("3 labels sent to " + queue);
  }

  private void receive() {
    window.robot().push(KeyCode.F6);
    window.awaitText("notes-title", "Choose a bag");
    for (String id : Plan.returned(ids)) {
      window.scan(id);
      window.awaitText("notes-title", "Notes of");
      int at = ids.indexOf(id);
      window.type("sample", "AF-" + (at + 1));
      window.type("collected", Plan.collected(at));
      window.type("volume_ml", Plan.READ_WRONGLY);
      if (at == 0) {
        window.type("site", "footbridge"); // stays for the next bag, as does how it was taken
        window.press("taken", KeyCode.DOWN);
      }
      window.robot().push(KeyCode.F12);
      window.awaitText("notes-title", "Choose a bag");
    }
    RobotWindow.await("both fit", () -> window.text("take").contains("2"));
    window.robot().push(KeyCode.F12);
    window.awaitNotice("taken in");
  }

  private void dry(Plan.Round next, String verdict) {
    window.robot().push(KeyCode.F7).push(KeyCode.ALT, KeyCode.N);
    for (int i = 0; i < ids.size(); i++) {
      window.scan(ids.get(i));
      window.awaitText("drying-prompt", "dish of " + ids.get(i));
      window.type("scan", "" + (i + 1));
      window.robot().push(KeyCode.ENTER);
      window.awaitText("drying-prompt", "next bag");
    }
    window.type("temperature", "104");
    window.type("thermometer", "T1");
    window.robot().push(KeyCode.F12);
    window.awaitText("cycle-title", "loaded filters");
    time.pass(Plan.OVEN);
    window.type("temperature", "104");
    window.robot().push(KeyCode.F12);
    window.awaitNotice("3 filters out");
    time.pass(Plan.DESICCATOR);
    round = next;
    postWeigh(verdict);
  }

  private void postWeigh(String verdict) {
    window.robot().push(KeyCode.F8);
    RobotWindow.await("the batch", () -> window.node("start") != null);
    window.robot().push(KeyCode.F12);
    for (String id : ids) {
      window.awaitText("step", "Scan the next bag");
      window.scan(id);
      weigh(id);
      window.awaitText("verdict", verdict);
    }
    window.awaitText("step", "Scan the next bag");
    window.robot().push(KeyCode.ALT, KeyCode.F);
    onPan(Plan.WEIGHT);
    window.awaitText("end", "3 masses recorded");
    balance.act("off");
  }

  private void evening() {
    window.robot().push(KeyCode.F9);
    RobotWindow.await("results", () -> table("table").getItems().size() == 3);
    window.robot().push(KeyCode.ALT, KeyCode.F);
    window.type("folder", folder.resolve("results").toString());
    window.press("files.write", KeyCode.SPACE);
    RobotWindow.await("files", () -> Files.exists(folder.resolve("results/report.pdf")));
    release(1);
    correct();
    release(2);
  }

  private void release(int reports) {
    window.robot().push(KeyCode.F11);
    RobotWindow.await("three results", () -> table("filters").getItems().size() == 3);
    window.press("release", KeyCode.SPACE);
    window.awaitNotice("Released as report " + ids.get(0).substring(0, 6) + "-R" + reports);
  }

  private void correct() {
    window.robot().push(KeyCode.F10);
    window.scan(ids.get(0));
    RobotWindow.await("its entries", () -> !window.node("all").isDisabled());
    window.press("entries", KeyCode.HOME);
    for (int row = 1; !window.text("entry-title").contains("Receipt"); row++) {
      int wanted = row;
      window.robot().push(KeyCode.DOWN);
      RobotWindow.await(
          "entry " + wanted,
          () -> table("entries").getSelectionModel().getSelectedIndex() == wanted);
      window.awaitText("entry-title", "/");
      assertTrue(row < table("entries").getItems().size(), "no receipt among the entries");
    }
    while (!instead().equals(Plan.READ_WRONGLY)) {
      window.press("correct", KeyCode.DOWN);
    }
    window.type("instead", Plan.READ_AGAIN);
    window.type("reason", "bottle misread");
    window.robot().push(KeyCode.ALT, KeyCode.W);
    window.awaitText("amend-said", "1 result would change");
    window.robot().push(KeyCode.ALT, KeyCode.D);
    window.awaitText("amend-said", "It is recorded");
  }

  private String instead() {
    return RobotWindow.on(() -> ((TextInputControl) window.node("instead")).getText());
  }

  private ComboBox<?> choice(String id) {
    return (ComboBox<?>) window.node(id);
  }

  private TableView<?> table(String id) {
    return (TableView<?>) window.node(id);
  }
}
