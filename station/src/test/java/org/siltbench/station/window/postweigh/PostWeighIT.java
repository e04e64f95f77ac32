package org.siltbench.station.window.postweigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.command.CommandLab;
import org.siltbench.station.command.weigh.PtyFeed;
import org.siltbench.station.json.Json;
import org.siltbench.station.window.BenchTime;
import org.siltbench.station.window.LedgerFacts;
import org.siltbench.station.window.MarkedWords;
import org.siltbench.station.window.RobotWindow;

/** A post-weighing in the window: a wedge scanner, a pseudo-terminal, no mouse. */
@Timeout(180)
class PostWeighIT {

  private static final int FASTER = 10;
  private static final String EMPTY = "0.00000 g";

  @TempDir Path folder;
  private final BenchTime time = new BenchTime(FASTER);
  private PtyFeed balance;

  @BeforeEach
  void setUp() throws Exception {
    balance = new PtyFeed(folder.resolve("port"), 100 / FASTER, EMPTY);
  }

  @AfterEach
  void tearDown() throws Exception {
    balance.close();
  }

  private record Dried(CommandLab lab, List<String> ids) {}

  /** A lab whose filters came back, were dried once, weighed by hand, and dried again. */
  private Dried dried(String name) throws Exception {
    CommandLab lab = new CommandLab(folder.resolve(name), time).at(time.clock()).of(new Random(1));
    lab.ok("lab", "new", "--name", name);
    lab.ok("balance", "describe", "--name", "Bench balance 1", "--balance", balance.spec());
    lab.ok("batch", "new", "--name", "A", "--lot", "L", "--method", "epa-160.2", "--count", "3");
    lab.ok("batch", "list", "--batch", "A", "--json");
    List<String> ids = new ArrayList<>();
    Map<?, ?> one = (Map<?, ?>) ((List<?>) Json.read(lab.out().strip())).get(0);
    for (Object filter : (List<?>) one.get("filters")) {
      ids.add(String.valueOf(((Map<?, ?>) filter).get("filter")));
    }
    String stated = "filter,mass_g,weighed\n";
    String notes = "filter,sample,site,collected,volume_ml,taken\n";
    for (String id : ids) {
      stated += id + ",0.11234,2026-01-05T10:00Z\n";
      notes += id + ",S" + id + ",upper,2026-02-01T10:00Z,500,aliquot\n";
    }
    Path pre = Files.writeString(folder.resolve(name + "-pre.csv"), stated);
    Path receipt = Files.writeString(folder.resolve(name + "-notes.csv"), notes);
    lab.ok("preweigh", "--batch", "A", "--stated", pre.toString(), "--balance", "B1");
    lab.ok("receive", "--from", receipt.toString());
    dry(lab, ids, 500, 400);
    String typed = ids.get(0) + " 0.12895 0.12895\n" + ids.get(1) + " 0.13000 0.13000\n";
    lab.input(typed).ok("postweigh", "--keyed", "--balance", "B1", "--at", ago(330));
    dry(lab, ids.subList(0, 2), 250, 60);
    return new Dried(lab, ids);
  }

  private void dry(CommandLab lab, List<String> ids, int in, int out) {
    lab.ok(
        "dry",
        "start",
        "--filters",
        String.join(",", ids),
        "--number",
        "--temperature",
        "104",
        "--in",
        ago(in));
    lab.ok("dry", "end", "--temperature", "104", "--out", ago(out));
  }

  private String ago(int minutes) {
    return OffsetDateTime.now(time.clock()).minusMinutes(minutes).toString();
  }

  @Test
  void each_scan_gets_its_mass_and_its_verdict_and_a_wrong_one_its_reason() throws Exception {
    Dried byWindow = dried("window");
    List<String> ids = byWindow.ids();
    try (RobotWindow window = RobotWindow.open(byWindow.lab().folder(), time)) {
      window.hear(balance.spec(), "postweigh");
      window.awaitText("state", "Ready");
      window.shot("postweigh-set-up");
      window.robot().push(KeyCode.F12);
      window.awaitText("step", "Scan the next bag");
      window.shot("postweigh-scan");

      window.scan("K3DF0712R");
      awaitNotice(window, "K3DF0712R");
      window.shot("postweigh-unknown-bag");

      window.scan(ids.get(0));
      window.awaitText("step", "Place on the pan");
      window.shot("postweigh-place");
      window.scan(ids.get(1));
      awaitNotice(window, "not taken");
      balance.show("0.12891 g");
      window.awaitText("verdict", "constant");
      window.awaitText("step", "Take it off");
      window.shot("postweigh-constant");
      balance.show(EMPTY);
      window.awaitText("step", "Scan the next bag");

      window.scan(ids.get(0));
      awaitNotice(window, ids.get(0));
      window.shot("postweigh-second-scan");

      window.scan(ids.get(1));
      window.awaitText("step", "Place on the pan");
      balance.show("0.12900 g");
      window.awaitText("verdict", "dry again");
      window.shot("postweigh-dry-again");
      balance.show(EMPTY);
      window.awaitText("step", "Scan the next bag");
      window.robot().clickOn(window.node("finish"));
      window.awaitText("end", "2 masses recorded");
      window.shot("postweigh-over");
      assertEquals(2, observed(LedgerFacts.of(window.lab(), "weighing")));
    }
    assertTrue(VerifyLab.of(byWindow.lab().folder(), List.of()).ok());
  }

  /** Those over the balance; those typed in to prepare the lab carry the moment of the test. */
  private static long observed(List<String> facts) {
    return facts.stream().filter(fact -> fact.contains("observed=true")).count();
  }

  private static void awaitNotice(RobotWindow window, String text) {
    RobotWindow.await(
        "a notice about " + text,
        () ->
            window.desk().notices().list().stream()
                .anyMatch(n -> MarkedWords.plain(n.what()).contains(text)));
  }

  @Test
  void a_surprising_mass_is_refused_until_the_one_key_says_that_it_is_right() throws Exception {
    Dried dried = dried("surprise");
    try (RobotWindow window = RobotWindow.open(dried.lab().folder(), time)) {
      window.hear(balance.spec(), "postweigh");
      window.awaitText("state", "Ready");
      window.robot().push(KeyCode.F12);
      window.awaitText("step", "Scan the next bag");
      window.scan(dried.ids().get(0));
      window.awaitText("step", "Place on the pan");
      balance.show("0.10100 g");
      window.awaitText("step", "Is this mass right?");
      window.robot().push(KeyCode.F12);
      awaitNotice(window, "A reason is needed");
      window.robot().write("weighed twice, torn at the rim");
      window.shot("postweigh-decide");
      window.robot().push(KeyCode.F12);
      balance.show(EMPTY);
      window.awaitText("step", "Place on the pan");
      balance.show("0.10100 g");
      window.awaitText("last", "0.10100");
      assertTrue(
          LedgerFacts.of(window.lab(), "weighing").stream()
              .anyMatch(fact -> fact.contains("reason=weighed twice, torn at the rim")));
      balance.show(EMPTY);
      window.awaitText("step", "Scan the next bag");
    }
  }

  @Test
  void a_dish_is_scanned_and_its_bag_is_asked_for_once() throws Exception {
    Dried dried = dried("dishes");
    try (RobotWindow window = RobotWindow.open(dried.lab().folder(), time)) {
      window.hear(balance.spec(), "postweigh");
      window.awaitText("state", "Ready");
      window.robot().push(KeyCode.F12);
      window.awaitText("step", "Scan the next bag");
      window.scan("2");
      window.awaitText("step", "Scan the bag of this dish");
      window.scan(dried.ids().get(1));
      window.awaitText("step", "Place on the pan");
      balance.show("0.12990 g");
      window.awaitText("last", "0.12990");
      balance.show(EMPTY);
      window.awaitText("step", "Scan the next bag");
      window.scan("1");
      window.awaitText("step", "Scan the bag of this dish");
      window.scan(dried.ids().get(2));
      awaitNotice(window, "In dish 1 lies " + dried.ids().get(0));
    }
  }
}
