package org.siltbench.station.window.receipt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.work.receipt.Box;
import org.siltbench.station.work.receipt.Box.Standing;
import org.siltbench.station.work.receipt.Condition;

/** A box of returned bags, gone through without a screen. */
class ReceiptModelTest {

  @TempDir Path folder;
  private TestDesk desk;
  private ReceiptModel model;
  private List<String> ids;

  @BeforeEach
  void open() {
    desk = new TestDesk(folder.resolve("lab"));
    ids = desk.batch("storm", "sm-2540d-22", "sample", "sample", "sample", "spare", "control");
    ids.forEach(id -> desk.pre(id, "0.11234"));
    desk.write(
        "batch.issued", "batch", batch(), "trip", "Alder Fork", "filters", ids.subList(0, 4));
    model = new ReceiptModel(desk.desk());
    desk.desk().go("receipt");
    model.refresh();
  }

  private String batch() {
    return state(ids.get(0)).batch();
  }

  private FilterState state(String id) {
    return Filters.require(desk.desk().lab().register(), id);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private void scan(String... bags) {
    for (String bag : bags) {
      Entered.take(desk.desk(), model, bag);
    }
  }

  private void type(String... columnAndText) {
    for (int i = 0; i < columnAndText.length; i += 2) {
      model.notes().cell(columnAndText[i]).set(columnAndText[i + 1]);
    }
  }

  private Standing standing(String id) {
    return bag(id).standing();
  }

  private Box.Bag bag(String id) {
    return model.bags().stream().filter(b -> b.filter().equals(id)).findFirst().orElseThrow();
  }

  private Notice newest() {
    return desk.desk().notices().list().get(0);
  }

  @Test
  void a_scanned_bag_gets_its_notes_and_is_taken_in() {
    scan(ids.get(0));
    assertEquals(Standing.NO_NOTES, standing(ids.get(0)));
    assertEquals(Standing.MISSING, standing(ids.get(1)));
    model.notes().day.set("2026-05-13");
    type("sample", "S1", "site", "A", "collected", "9:45", "volume_ml", "250,5");
    model.notes().keep();
    assertEquals(Standing.FITS, standing(ids.get(0)));
    assertEquals(Status.ISSUED, state(ids.get(0)).status());
    model.take();
    FilterState taken = state(ids.get(0));
    assertEquals(Status.RECEIVED, taken.status());
    assertEquals("250.5", taken.record().orElseThrow().text("volume_ml"));
    assertEquals("2026-05-13T09:45Z", taken.record().orElseThrow().text("collected"));
    assertEquals("1 bag taken in.", newest().what());
    assertTrue(model.bags().isEmpty());

    scan(ids.get(1));
    assertEquals("A", model.notes().cell("site").get());
    assertEquals("", model.notes().cell("sample").get());
  }

  @Test
  void a_cell_that_makes_no_sense_is_named_and_nothing_is_kept() {
    scan(ids.get(0));
    type("volume_ml", "0.5 L");
    model.notes().keep();
    assertTrue(newest().what().contains("volume_ml"), newest().what());
    assertEquals(Standing.NO_NOTES, standing(ids.get(0)));
    model.notes().day.set("yesterday");
    model.notes().keep();
    assertTrue(newest().what().contains("is no day"), newest().what());
  }

  @Test
  void a_condition_that_holds_the_result_back_says_so_and_does() {
    scan(ids.get(0));
    type("sample", "S1", "volume_ml", "200");
    model.notes().mark(Condition.TORN_LOSS);
    model.notes().keep();
    assertEquals(Standing.HELD, standing(ids.get(0)));
    assertTrue(bag(ids.get(0)).said().get(0).english().contains("lower bound"));
    model.take();
    assertEquals(1, state(ids.get(0)).holds().size());
  }

  @Test
  void notes_without_a_bag_and_two_notes_are_told_and_settled() throws IOException {
    Path file = folder.resolve("notes.csv");
    Files.writeString(
        file,
        "filter,sample,site,volume_ml\n"
            + ids.get(0)
            + ",S1,A,200\n"
            + ids.get(0)
            + ",S1,A,210\n"
            + ids.get(1)
            + ",S2,A,220\n");
    scan(ids.get(0));
    model.imports().file.set(file.toString());
    model.imports().open();
    assertEquals(List.of(), model.imports().preview().get().orElseThrow().doubts());
    model.imports().take();
    assertEquals(Standing.TWO_NOTES, standing(ids.get(0)));
    assertEquals(Standing.NO_BAG, standing(ids.get(1)));

    model.take();
    assertEquals(Notice.Level.REFUSED, newest().level());
    assertEquals(Status.ISSUED, state(ids.get(0)).status());

    model.choose(ids.get(0));
    model.keep(model.notes().several().get(1));
    assertEquals(Standing.FITS, standing(ids.get(0)));
    model.goOn.set(true);
    model.markMissing.set(true);
    model.take();
    assertEquals("210", state(ids.get(0)).record().orElseThrow().text("volume_ml"));
    assertEquals(Status.ISSUED, state(ids.get(1)).status());
    assertFalse(state(ids.get(1)).missing());
    assertTrue(state(ids.get(2)).missing());

    model.isHere(ids.get(1));
    assertEquals(Standing.FITS, standing(ids.get(1)));
    model.take();
    assertEquals(Status.RECEIVED, state(ids.get(1)).status());
  }

  @Test
  void a_doubt_about_a_file_is_settled_by_a_button_before_anything_is_taken() throws IOException {
    Path file = folder.resolve("notes.csv");
    Files.writeString(file, "Filter;Probe;Datum;Volumen\n" + ids.get(0) + ";S1;05/06/2026;200\n");
    model.imports().file.set(file.toString());
    model.imports().open();
    var doubts = model.imports().preview().get().orElseThrow().doubts();
    assertFalse(doubts.isEmpty());
    model.imports().take();
    assertTrue(newest().what().contains("must be settled"), newest().what());
    for (int i = 0;
        i < 5 && !model.imports().preview().get().orElseThrow().doubts().isEmpty();
        i++) {
      var preview = model.imports().preview().get().orElseThrow();
      List<String> answers = ImportModel.answers(preview, preview.doubts().get(0));
      model
          .imports()
          .settle(
              answers.stream()
                  .filter(a -> a.endsWith("day-first") || a.endsWith("=mL"))
                  .findFirst()
                  .orElse(answers.get(0)));
    }
    assertEquals(List.of(), model.imports().preview().get().orElseThrow().doubts());
  }

  @Test
  void a_bag_without_notes_is_taken_in_as_such_or_goes_back_to_stock() {
    scan(ids.get(0), ids.get(3));
    model.withoutNotes(ids.get(0));
    model.backToStock(ids.get(3));
    assertEquals(Status.PRE_WEIGHED, state(ids.get(3)).status());
    model.take();
    assertEquals("no field notes", state(ids.get(0)).record().orElseThrow().text("remarks"));
  }

  @Test
  void a_bag_of_another_lab_or_one_that_never_left_is_told() {
    scan("K3DF0712R");
    assertEquals(Notice.Level.REFUSED, newest().level());
    scan(ids.get(4));
    type("volume_ml", "100");
    model.notes().keep();
    assertEquals(Standing.LOOK, standing(ids.get(4)));
    assertTrue(bag(ids.get(4)).said().stream().anyMatch(s -> s.english().contains("never issued")));
  }

  @Test
  void custody_is_recorded_for_the_trip() {
    model.custody().refresh();
    assertEquals("Alder Fork", model.custody().trip.get());
    scan(ids.get(0), ids.get(1));
    model.custody().relinquished.set("CD");
    assertEquals("AB", model.custody().received.get());
    assertEquals("2", model.custody().bags.get());
    model.custody().temperature.set("4,5");
    model.custody().record();
    assertEquals(1, model.custody().lines().size());
    assertEquals("4.5", model.custody().lines().get(0).temperatureC());
    model.custody().bags.set("many");
    model.custody().relinquished.set("CD");
    model.custody().record();
    assertTrue(newest().what().contains("is no number"), newest().what());
  }
}
