package org.siltbench.station.window.drying;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.window.BenchTime;
import org.siltbench.station.window.MarkedWords;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.TestDesk;

/** A drying cycle begun and ended by keyboard, with pictures of every state. */
class DryingIT {

  @TempDir Path folder;

  /** Thirty returned bags; the clock of the past stands so long before now. */
  private static List<String> returned(TestDesk desk, Duration ago) {
    Instant then = BenchTime.MORNING.minus(ago);
    desk.clock().advance(Duration.between(desk.clock().instant(), then));
    String[] roles = new String[30];
    Arrays.fill(roles, "sample");
    roles[28] = "field-blank";
    roles[29] = "method-blank";
    List<String> ids = desk.batch("Alder Fork storm", "sm-2540d-22", roles);
    for (String id : ids) {
      desk.pre(id, "0.11234");
    }
    for (String id : ids.subList(0, 29)) {
      desk.write("sample.received", "filter", id, "sample", id, "volume_ml", "250");
    }
    return ids;
  }

  private static void start(TestDesk desk, String cycle, List<String> ids, Duration ago) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (String id : ids) {
      rows.add(Map.of("filter", id, "dish", Integer.toString(rows.size() + 1)));
    }
    String in = at(ago);
    desk.write(
        "dry.started",
        "cycle",
        cycle,
        "filters",
        rows,
        "purpose",
        "post",
        "in",
        in,
        "temperature_c",
        "104",
        "thermometer",
        "T1",
        "observed",
        true);
  }

  private static String at(Duration ago) {
    return BenchTime.MORNING.minus(ago).atOffset(ZoneOffset.UTC).toString();
  }

  private static void end(
      TestDesk desk,
      String cycle,
      List<String> ids,
      Duration out,
      Duration cooled,
      Duration useful) {
    desk.write(
        "dry.ended",
        "cycle",
        cycle,
        "filters",
        ids,
        "out",
        at(out),
        "cooled_until",
        at(cooled),
        "useful_until",
        at(useful),
        "observed",
        true);
  }

  @Test
  void a_cycle_is_begun_by_scans_and_keys_alone() {
    Path lab = folder.resolve("lab");
    List<String> ids;
    try (TestDesk desk = new TestDesk(lab)) {
      ids = returned(desk, Duration.ofMinutes(30));
    }
    try (RobotWindow window = RobotWindow.open(lab)) {
      window.robot().push(KeyCode.F7);
      RobotWindow.await("the empty list", () -> window.scene().getRoot().lookup("#begin") != null);
      window.shot("drying-empty");

      window.robot().push(KeyCode.F2).push(KeyCode.F7);
      window.robot().push(KeyCode.ALT, KeyCode.N);
      window.awaitText("drying-prompt", "Scan the first bag.");
      window.robot().write(ids.get(0)).push(KeyCode.ENTER);
      window.awaitText("drying-prompt", "dish of " + ids.get(0));
      window.robot().write("1").push(KeyCode.ENTER);
      window.awaitText("drying-prompt", "next bag");
      window.robot().write(ids.get(0).substring(0, 8) + "X").push(KeyCode.ENTER);
      RobotWindow.await("the refusal", () -> !window.desk().notices().list().isEmpty());
      window.shot("drying-wrong-bag");
      window.robot().push(KeyCode.ESCAPE);
      window.robot().write(ids.get(1)).push(KeyCode.ENTER);
      window.awaitText("drying-prompt", "dish of " + ids.get(1));
      window.robot().write("2").push(KeyCode.ENTER);
      window.awaitText("drying-prompt", "next bag");
      window.shot("drying-start");
      window.robot().push(KeyCode.ALT, KeyCode.S);
      window.awaitText("cycle-title", "loaded filters");
      assertEquals(Status.DRYING, Filters.require(window.lab().register(), ids.get(0)).status());
      window.shot("drying-running");
      window.robot().push(KeyCode.ALT, KeyCode.T);
      RobotWindow.await(
          "too early",
          () ->
              window.desk().notices().list().stream()
                  .anyMatch(notice -> MarkedWords.plain(notice.what()).contains("min are left")));
      window.shot("drying-too-early");
    }
  }

  @Test
  void the_day_stands_in_the_list() {
    Path lab = folder.resolve("lab");
    try (TestDesk desk = new TestDesk(lab)) {
      List<String> ids = returned(desk, Duration.ofHours(8));
      desk.clock().advance(Duration.between(desk.clock().instant(), BenchTime.MORNING));
      start(desk, "C1", ids.subList(0, 24), Duration.ofMinutes(75));
      start(desk, "C2", ids.subList(24, 26), Duration.ofMinutes(190));
      end(
          desk,
          "C2",
          ids.subList(24, 26),
          Duration.ofMinutes(120),
          Duration.ofMinutes(60),
          Duration.ofMinutes(-180));
      start(desk, "C3", ids.subList(26, 28), Duration.ofMinutes(80));
      end(
          desk,
          "C3",
          ids.subList(26, 28),
          Duration.ofMinutes(10),
          Duration.ofMinutes(-50),
          Duration.ofMinutes(-230));
      start(desk, "C4", ids.subList(28, 29), Duration.ofMinutes(420));
      end(
          desk,
          "C4",
          ids.subList(28, 29),
          Duration.ofMinutes(360),
          Duration.ofMinutes(300),
          Duration.ofMinutes(20));
    }
    try (RobotWindow window = RobotWindow.open(lab)) {
      window.robot().push(KeyCode.F7);
      RobotWindow.await("the day", () -> window.robot().lookup(".row").queryAll().size() == 4);
      window.press("open-C1", KeyCode.SPACE);
      window.awaitText("cycle-plan", "Load 2");
      window.shot("drying-day");
    }
  }
}
