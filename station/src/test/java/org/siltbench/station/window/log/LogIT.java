package org.siltbench.station.window.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.life.Filters;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.work.paper.InPrint;

/** The log read and corrected by keys, with pictures of every state. */
class LogIT {

  @TempDir Path folder;
  private List<String> ids;

  private void prepare(Path lab) {
    try (TestDesk desk = new TestDesk(lab)) {
      ids = desk.batch("Alder Fork storm", "sm-2540d-22", "sample", "sample", "sample");
      String[] grams = {"0.14334", "0.12234", "0.13100"};
      for (int i = 0; i < ids.size(); i++) {
        String id = ids.get(i);
        desk.pre(id, "0.11234");
        desk.write(
            "sample.received",
            "filter",
            id,
            "sample",
            "AF-" + (i + 1),
            "role",
            "sample",
            "site",
            "upper bridge",
            "volume_ml",
            "250",
            "condition",
            "ok",
            "by",
            "CD");
        desk.write(
            "dry.started",
            "cycle",
            "C" + i,
            "purpose",
            "post",
            "temperature_c",
            "104",
            "filters",
            List.of(Map.of("filter", id, "dish", "1")));
        desk.write("dry.ended", "cycle", "C" + i, "filters", List.of(id));
        desk.write(
            "weighing",
            "filter",
            id,
            "status",
            "post",
            "round",
            1L,
            "cycle",
            "C" + i,
            "mass_g",
            grams[i],
            "verdict",
            "constant");
      }
    }
  }

  @Test
  void a_volume_is_corrected_and_two_filters_swapped_after_a_look_at_what_changes() {
    Path lab = folder.resolve("lab");
    prepare(lab);
    try (RobotWindow window = RobotWindow.open(lab)) {
      window.own("sample"); // the log shows the words of entries as they are recorded
      window.robot().push(KeyCode.F10);
      RobotWindow.await("the entries", () -> grid(window).getItems().size() == 16);
      window.shot("log");
      window.scan(ids.get(0));
      RobotWindow.await("one filter's entries", () -> grid(window).getItems().size() == 6);
      RobotWindow.on(
          () -> {
            grid(window).getSelectionModel().select(3);
            return true;
          });
      window.awaitText("entry-title", "Receipt");
      RobotWindow.on(
          () -> {
            @SuppressWarnings("unchecked") // the choice of fields holds their names
            ComboBox<String> field = (ComboBox<String>) window.node("correct");
            field.setValue("volume_ml");
            return true;
          });
      set(window, "instead", "500");
      window.robot().push(KeyCode.ALT, KeyCode.W);
      RobotWindow.await("a reason is missing", () -> !window.desk().notices().list().isEmpty());
      window.shot("log-refused");
      window.robot().push(KeyCode.ESCAPE);
      set(window, "reason", "bottle misread");
      window.robot().push(KeyCode.ALT, KeyCode.W);
      window.awaitText("amend-said", "1 result would change");
      window.shot("log-before");
      window.robot().push(KeyCode.ALT, KeyCode.D);
      window.awaitText("amend-said", "It is recorded");
      assertEquals(
          "500",
          Filters.require(window.lab().register(), ids.get(0))
              .record()
              .orElseThrow()
              .text("volume_ml"));
      window.shot("log-after");
      window.robot().push(KeyCode.ESCAPE);
      window.robot().push(KeyCode.ALT, KeyCode.S);
      RobotWindow.await("the swap", () -> window.scene().getRoot().lookup("#first") != null);
      window.scan(ids.get(1));
      window.scan(ids.get(2));
      set(window, "reason", "bags exchanged at the oven");
      window.robot().push(KeyCode.ALT, KeyCode.W);
      window.awaitText("amend-said", "2 results would change");
      window.shot("log-swap");
      window.robot().push(KeyCode.ALT, KeyCode.H);
      RobotWindow.await("reject", () -> window.scene().getRoot().lookup("#judged") != null);
      window.shot("log-filter");
      window.robot().push(KeyCode.ALT, KeyCode.V);
      RobotWindow.await("prove", () -> window.scene().getRoot().lookup("#verify") != null);
      window.robot().push(KeyCode.ALT, KeyCode.I);
      RobotWindow.await("the verdict", () -> window.scene().getRoot().lookup("#verdict") != null);
      window.shot("log-verified");
    }
  }

  @Test
  void every_line_of_the_list_is_whole_in_both_languages_of_the_window() {
    Path lab = folder.resolve("lab");
    prepare(lab);
    for (Locale locale : List.of(Words.SCREEN_ENGLISH, Locale.GERMAN)) {
      try (RobotWindow window = RobotWindow.open(lab, locale)) {
        window.robot().push(KeyCode.F10);
        RobotWindow.await("the entries", () -> grid(window).getItems().size() == 16);
        if (locale.equals(Locale.GERMAN)) {
          window.shot("log-german");
        }
        List<String> lines = RobotWindow.on(() -> lines(window));
        String mass = InPrint.id(ids.get(2)) + ", post, 0.13100 g";
        String bag = InPrint.id(ids.get(2)) + ", AF-3, upper bridge, 250 mL";
        assertTrue(lines.contains(mass), lines::toString);
        assertTrue(lines.contains(bag), lines::toString);
        assertTrue(lines.stream().anyMatch(line -> line.endsWith(", AB")), lines::toString);
        assertEquals(List.of(), lines.stream().filter(line -> line.endsWith("...")).toList());
      }
    }
  }

  /** The list's lines as they are drawn: what has no room ends in dots. */
  private static List<String> lines(RobotWindow window) {
    return grid(window).lookupAll(".cell-lines .label > .text").stream()
        .map(drawn -> ((Text) drawn).getText())
        .filter(line -> !line.isEmpty())
        .toList();
  }

  private static TableView<?> grid(RobotWindow window) {
    return (TableView<?>) window.node("entries");
  }

  private static void set(RobotWindow window, String id, String text) {
    RobotWindow.on(
        () -> {
          ((TextField) window.node(id)).setText(text);
          return true;
        });
  }
}
