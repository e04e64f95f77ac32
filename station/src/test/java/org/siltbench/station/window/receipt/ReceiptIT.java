package org.siltbench.station.window.receipt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.window.MarkedWords;
import org.siltbench.station.window.RobotWindow;
import org.siltbench.station.window.TestDesk;

/**
 * A box of bags under a robot: scan, type, take in; a file with doubts; pictures of every state.
 */
class ReceiptIT {

  @TempDir Path folder;
  private List<String> ids;

  private void prepare(Path lab) {
    try (TestDesk desk = new TestDesk(lab)) {
      ids =
          desk.batch(
              "Alder Fork storm",
              "sm-2540d-22",
              "sample",
              "sample",
              "sample",
              "sample",
              "sample",
              "field-blank",
              "trip-blank",
              "spare");
      ids.forEach(id -> desk.pre(id, "0.11234"));
      String batch = Filters.require(desk.desk().lab().register(), ids.get(0)).batch();
      desk.write(
          "batch.issued", "batch", batch, "trip", "Alder Fork, May", "filters", ids, "to", "CD");
      desk.write(
          "custody",
          "trip",
          "Alder Fork, May",
          "relinquished",
          "CD",
          "received",
          "EF",
          "bags",
          8L,
          "time",
          "2026-05-14T18:20:00Z",
          "temperature_c",
          "4.1");
    }
  }

  @Test
  void a_box_is_gone_through_by_scans_and_keys() throws IOException {
    Path lab = folder.resolve("lab");
    prepare(lab);
    Path file = lab.resolve("field notes.csv");
    Files.writeString(
        file,
        "Filter;Probe;Messstelle;Datum;Uhrzeit;Menge;Bemerkungen\n"
            + ids.get(1)
            + ";AF-2;upper bridge;05/04/2026;09:30;250;\n"
            + ids.get(2)
            + ";AF-3;upper bridge;05/04/2026;09:45;180;clogged\n"
            + ids.get(2)
            + ";AF-3;upper bridge;05/04/2026;09:45;190;\n"
            + ids.get(4)
            + ";AF-5;lower weir;05/04/2026;10:15;210;\n");
    try (RobotWindow window = RobotWindow.open(lab)) {
      window.robot().push(KeyCode.F6);
      window.awaitText("notes-title", "Choose a bag");
      window.shot("receipt-empty");
      type(window, "scan", ids.get(0));
      window.awaitText("notes-title", "Notes of");
      RobotWindow.await(
          "the focus in the form", () -> window.scene().getFocusOwner() == window.node("sample"));
      window.robot().write("AF-1");
      RobotWindow.on(
          () -> {
            text(window, "site").setText("upper bridge");
            text(window, "volume_ml").setText("a lot");
            return true;
          });
      window.robot().push(KeyCode.ENTER);
      RobotWindow.await("the refusal", () -> !window.desk().notices().list().isEmpty());
      window.shot("receipt-wrong-cell");
      RobotWindow.on(
          () -> {
            text(window, "volume_ml").setText("250");
            ((ToggleButton) window.node("condition-torn-loss")).fire();
            return true;
          });
      window.robot().push(KeyCode.ENTER);
      window.awaitText("notes-title", "Choose a bag");
      for (String id : List.of(ids.get(1), ids.get(2), ids.get(3), ids.get(7))) {
        type(window, "scan", id);
        window.awaitText("notes-title", id.substring(6));
      }
      window.robot().push(KeyCode.ALT, KeyCode.I);
      RobotWindow.await("the file part", () -> window.scene().getRoot().lookup("#file") != null);
      RobotWindow.on(
          () -> {
            text(window, "file").setText("field notes.csv");
            text(window, "file").requestFocus();
            return true;
          });
      window.robot().push(KeyCode.ENTER);
      RobotWindow.await(
          "the doubt", () -> window.scene().getRoot().lookup("#settle-dates-day-first") != null);
      window.shot("receipt-file-doubts");
      while (RobotWindow.on(() -> fire(window))) {
        RobotWindow.on(() -> true);
      }
      RobotWindow.await("no doubt left", () -> !window.node("import-take").isDisabled());
      window.shot("receipt-file");
      RobotWindow.on(
          () -> {
            ((Button) window.node("import-take")).fire();
            return true;
          });
      RobotWindow.await(
          "the lines",
          () ->
              window.desk().notices().list().stream()
                  .anyMatch(n -> MarkedWords.plain(n.what()).contains("put into the box")));
      window.robot().push(KeyCode.ESCAPE);
      type(window, "scan", ids.get(2));
      RobotWindow.await(
          "both notes",
          () ->
              !window.robot().lookup("#keep.this").tryQuery().isPresent()
                  && window.text("notes-said").contains("2 lines"));
      window.shot("receipt-box");
      window.robot().push(KeyCode.ALT, KeyCode.L).push(KeyCode.SPACE);
      window.robot().push(KeyCode.ALT, KeyCode.T);
      RobotWindow.await(
          "taken in",
          () ->
              window.desk().notices().list().stream()
                  .anyMatch(n -> MarkedWords.plain(n.what()).contains("taken in")));
      assertEquals(Status.RECEIVED, Filters.require(window.lab().register(), ids.get(0)).status());
      window.shot("receipt-taken");
      window.robot().push(KeyCode.ALT, KeyCode.C);
      RobotWindow.await("custody", () -> window.scene().getRoot().lookup("#custody") != null);
      window.shot("receipt-custody");
    }
  }

  private static boolean fire(RobotWindow window) {
    for (String id :
        List.of("settle-dates-day-first", "settle-unit-Menge-mL", "settle-Menge-volume-ml")) {
      if (window.scene().getRoot().lookup('#' + id) instanceof Button b) {
        b.fire();
        return true;
      }
    }
    return false;
  }

  private static void type(RobotWindow window, String field, String text) {
    RobotWindow.on(
        () -> {
          window.node(field).requestFocus();
          return true;
        });
    window.robot().write(text).push(KeyCode.ENTER);
  }

  private static TextField text(RobotWindow window, String id) {
    return (TextField) window.node(id);
  }
}
